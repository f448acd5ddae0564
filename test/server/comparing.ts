import type { ProtocolConnection } from "vscode-languageserver/node";
import type { ComparisonNotice, ChangesNotice, OldText } from "../../src/server/protocol.js";
import { clientInProcess } from "./in-process.js";

export const URI = "file:///plans/a.tileplan";
export const STOCK_URI = "file:///plans/stock.tileplan";

/** A wall of tile that another file declares; of `across` inches. */
export function wallOf(across: number): string {
  return `units inch
use "stock.tileplan"
wall back "Back wall" {
  size ${across} x 24
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;
}

/** The file that declares it; faces of 4 in unless told. */
export function stockOf(side = 4): string {
  return `units inch\ntile field "square" {\n  face ${side} x ${side}\n  thickness 1/4\n}\n`;
}

export function lastCommit(text: string, uri = URI): OldText {
  return { uri, text, revision: "a1" };
}

/** A client that hears all that is told of changes. */
export class ComparingClient {
  readonly connection: ProtocolConnection = clientInProcess();
  readonly comparisons: ComparisonNotice[] = [];
  readonly changes: ChangesNotice[] = [];
  readonly askedOld: string[] = [];
  refreshed = 0;
  changesSetting = true;
  /** The files of revision a1, by their addresses. */
  readonly old = new Map<string, string>([[STOCK_URI, stockOf()]]);
  #version = 1;
  #look = (): void => undefined;

  async start(): Promise<void> {
    const { connection } = this;
    const look = (): void => this.#look();
    connection.onNotification("gaugelath/comparison", (told: ComparisonNotice) => {
      this.comparisons.push(told);
      look();
    });
    connection.onNotification("gaugelath/changes", (told: ChangesNotice) => {
      this.changes.push(told);
      look();
    });
    connection.onRequest("gaugelath/readOld", ({ uri }: { uri: string }) => {
      this.askedOld.push(uri);
      return this.old.get(uri) ?? null;
    });
    connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => ({ debounce: 0, changes: this.changesSetting })),
    );
    connection.onRequest("workspace/codeLens/refresh", () => {
      this.refreshed++;
      this.#look();
      return null;
    });
    const workspace = { configuration: true, codeLens: { refreshSupport: true } };
    await connection.sendRequest("initialize", { processId: null, capabilities: { workspace } });
    await this.open(STOCK_URI, stockOf());
  }

  async open(uri: string, text: string): Promise<void> {
    const textDocument = { uri, languageId: "tileplan", version: 1, text };
    await this.connection.sendNotification("textDocument/didOpen", { textDocument });
  }

  async change(uri: string, text: string): Promise<number> {
    await this.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri, version: ++this.#version },
      contentChanges: [{ text }],
    });
    return this.#version;
  }

  /** Waits until something holds; looked at whenever the server told something. */
  async until<Found>(look: () => Found | undefined | false): Promise<Found> {
    for (;;) {
      const found = look();
      if (found !== undefined && found !== false) return found;
      await new Promise<void>((resolve) => (this.#look = resolve));
    }
  }
}
