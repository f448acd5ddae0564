import type { Connection } from "vscode-languageserver";
import type { PlanDocument } from "../service/index.js";
import { lspDiagnostic } from "./convert-diagnostics.js";
import type { OpenDocuments } from "./open-documents.js";
import type { PlanDesk } from "./plan-desk.js";
import { PICTURE, type PictureNotice, type WatchPicture } from "./protocol.js";
import type { Settings } from "./settings.js";
import type { ChangeDesk } from "./change-desk.js";

/**
 * Tells the client what becomes of changed documents: diagnostics, and pictures where they are
 * watched. Waits for a pause in typing; the newest text wins, and what was begun for an older one
 * is dropped.
 */
export class Publisher {
  readonly #waiting = new Map<string, ReturnType<typeof setTimeout>>();
  /** The plans whose pictures are wanted, and whether with the room. */
  readonly #watched = new Map<string, { readonly room: boolean }>();

  constructor(
    private readonly connection: Connection,
    private readonly desk: PlanDesk,
    private readonly documents: () => OpenDocuments,
    private readonly settings: Settings,
    private readonly changes: ChangeDesk,
  ) {}

  /** Has a changed document told of, and those that use it. */
  changed(document: PlanDocument): void {
    this.schedule(document.uri);
    this.#scheduleOthers(document.file);
  }

  closed({ uri, file }: PlanDocument): void {
    clearTimeout(this.#waiting.get(uri));
    this.#waiting.delete(uri);
    this.settings.forget(uri);
    void this.connection.sendDiagnostics({ uri, diagnostics: [] });
    this.#scheduleOthers(file);
  }

  /** Those that use a file, and those that are compared with it. */
  #scheduleOthers(file: string): void {
    const users = this.desk.usersOf(file).map(({ uri }) => uri);
    for (const uri of new Set([...users, ...this.changes.comparedWith(file)])) this.schedule(uri);
  }

  watch({ uri, watching, marks = null, room = false }: WatchPicture): void {
    this.changes.setMarks(uri, watching ? marks : null);
    if (!watching) {
      this.#watched.delete(uri);
      return;
    }
    this.#watched.set(uri, { room });
    this.tellNow(uri);
  }

  tellNow(uri: string): void {
    void this.#tell(uri);
  }

  scheduleAll(): void {
    for (const { uri } of this.documents().all()) this.schedule(uri);
  }

  schedule(uri: string): void {
    void this.settings.of(uri).then(({ debounce }) => {
      clearTimeout(this.#waiting.get(uri));
      this.#waiting.set(
        uri,
        setTimeout(() => void this.#tell(uri), debounce),
      );
    });
  }

  async #tell(uri: string): Promise<void> {
    this.#waiting.delete(uri);
    try {
      const document = await this.desk.ready(uri);
      if (!document) return;
      const { service, files } = this.desk;
      const { version } = document;
      const watched = this.#watched.get(uri);
      if (watched) {
        const picture: PictureNotice = service.picture(document, watched.room);
        void this.connection.sendNotification(PICTURE, picture);
      }
      const diagnostics = service
        .diagnostics(document)
        .map((diagnostic) => lspDiagnostic(diagnostic, files.uriOf));
      await this.connection.sendDiagnostics({ uri, version, diagnostics });
      // Last: the picture must not wait for what is marked in it.
      await this.changes.tell(document);
    } catch (error) {
      // A newer version came while files were read: it is told of in its turn.
      if (this.documents().newest(uri) !== undefined && !isStale(error)) {
        this.connection.console.error(`${uri} could not be told of: ${String(error)}`);
      }
    }
  }
}

function isStale(error: unknown): boolean {
  return error instanceof Error && error.message === "The text has changed meanwhile";
}
