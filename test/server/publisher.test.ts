import assert from "node:assert/strict";
import { setTimeout } from "node:timers/promises";
import type { ProtocolConnection, PublishDiagnosticsParams } from "vscode-languageserver/node";
import type { PictureNotice } from "../../src/server/protocol.js";
import { clientInProcess } from "./in-process.js";

const URI = "file:///plans/a.tileplan";
const USED = "file:///plans/b.tileplan";

interface Publishing {
  readonly client: ProtocolConnection;
  /** What is told next that fits; each is looked at once. */
  readonly until: (
    wanted: (told: PublishDiagnosticsParams) => boolean,
  ) => Promise<PublishDiagnosticsParams>;
  readonly open: (uri: string, text: string) => Promise<void>;
  readonly change: (uri: string, text: string) => Promise<number>;
  readonly close: (uri: string) => Promise<void>;
}

/** A client that hears what is published, without a pause before it. */
async function publishing(): Promise<Publishing> {
  const client = clientInProcess();
  let version = 1;
  const told: PublishDiagnosticsParams[] = [];
  let look = (): void => undefined;
  client.onNotification("textDocument/publishDiagnostics", (each: PublishDiagnosticsParams) => {
    told.push(each);
    look();
  });
  client.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
    items.map(() => ({ debounce: 0 })),
  );
  const capabilities = { workspace: { configuration: true } };
  await client.sendRequest("initialize", { processId: null, capabilities });
  return {
    client,
    until: async (wanted) => {
      for (;;) {
        const each = told.shift();
        if (!each) await new Promise<void>((resolve) => (look = resolve));
        else if (wanted(each)) return each;
      }
    },
    open: (uri, text) =>
      client.sendNotification("textDocument/didOpen", {
        textDocument: { uri, languageId: "tileplan", version: 1, text },
      }),
    change: async (uri, text) => {
      await client.sendNotification("textDocument/didChange", {
        textDocument: { uri, version: ++version },
        contentChanges: [{ text }],
      });
      return version;
    },
    close: (uri) => client.sendNotification("textDocument/didClose", { textDocument: { uri } }),
  };
}

describe("what is published", () => {
  it("is told once typing pauses, of the newest text alone", async () => {
    const client = clientInProcess();
    const told: PublishDiagnosticsParams[] = [];
    let tell = (): void => undefined;
    client.onNotification("textDocument/publishDiagnostics", (each: PublishDiagnosticsParams) => {
      told.push(each);
      tell();
    });
    client.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => ({ debounce: 150 })),
    );
    const capabilities = { workspace: { configuration: true } };
    await client.sendRequest("initialize", { processId: null, capabilities });
    const textDocument = { uri: URI, languageId: "tileplan", version: 1, text: "bed \n" };
    const first = new Promise<void>((resolve) => (tell = resolve));
    await client.sendNotification("textDocument/didOpen", { textDocument });
    for (let version = 2; version <= 20; version++) {
      await client.sendNotification("textDocument/didChange", {
        textDocument: { uri: URI, version },
        contentChanges: [{ text: version === 20 ? "bed 1\n" : "bed (\n" }],
      });
    }
    await first;
    // Were one waiting for each version, the others would follow at once.
    await setTimeout(100);
    assert.deepEqual(
      told.map(({ version, diagnostics }) => [version, diagnostics.length]),
      [[20, 0]],
    );
    client.dispose();
  });

  it("is told of the documents that use a changed one, too", async () => {
    const { client, until, open, change } = await publishing();
    await open(URI, 'use "b.tileplan"\nbed b\n');
    await until(({ uri, diagnostics }) => uri === URI && diagnostics.length > 0);
    await open(USED, "let b = 1\n");
    await until(({ uri, diagnostics }) => uri === URI && diagnostics.length === 0);
    await change(USED, "let c = 1\n");
    await until(({ uri, diagnostics }) => uri === URI && diagnostics.length > 0);
    client.dispose();
  });

  it("is nothing any more once a document is closed, and its users are told", async () => {
    const { client, until, open, close } = await publishing();
    await open(URI, 'use "b.tileplan"\nbed b\n');
    await open(USED, "let b = 1\n");
    await until(({ uri, diagnostics }) => uri === URI && diagnostics.length === 0);
    await close(USED);
    const closed = await until(({ uri, version }) => uri === USED && version === undefined);
    assert.deepEqual(closed.diagnostics, []);
    await until(({ uri, diagnostics }) => uri === URI && diagnostics.length > 0);
    client.dispose();
  });

  it("has pictures while they are watched, and no longer", async () => {
    const { client, until, open, change } = await publishing();
    const pictures: number[] = [];
    client.onNotification("gaugelath/picture", ({ version }: PictureNotice) => {
      pictures.push(version);
    });
    const watch = (watching: boolean): Promise<void> =>
      client.sendNotification("gaugelath/watchPicture", { uri: URI, watching });
    await open(URI, "bed 1\n");
    await until(({ version }) => version === 1);
    assert.deepEqual(pictures, []);
    await watch(true);
    await until(({ version }) => version === 1);
    const second = await change(URI, "bed 2\n");
    await until(({ version }) => version === second);
    assert.deepEqual(pictures, [1, second]);
    await watch(false);
    const third = await change(URI, "bed 3\n");
    await until(({ version }) => version === third);
    assert.deepEqual(pictures, [1, second]);
    client.dispose();
  });

  it("has the room in its pictures where a watch wants it, and corners join walls", async () => {
    const { client, until, open, change } = await publishing();
    const rooms: (readonly string[] | null)[] = [];
    client.onNotification("gaugelath/picture", ({ room }: PictureNotice) => {
      rooms.push(room?.walls.map(({ name }) => name) ?? null);
    });
    const watch = (room: boolean): Promise<void> =>
      client.sendNotification("gaugelath/watchPicture", { uri: URI, watching: true, room });
    const walls =
      "wall b {\n  size 20 x 10\n  left corner a under\n}\nwall a {\n  size 30 x 10\n  right corner b over\n}\n";
    await open(URI, walls);
    await until(({ version }) => version === 1);
    await watch(false);
    await until(({ version }) => version === 1);
    await watch(true);
    await until(({ version }) => version === 1);
    const second = await change(URI, "wall a {\n  size 30 x 10\n}\n");
    await until(({ version }) => version === second);
    // Round the room from left to right, not in the order of the text.
    assert.deepEqual(rooms, [null, ["a", "b"], null]);
    client.dispose();
  });
});
