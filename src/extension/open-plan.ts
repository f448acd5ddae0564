import * as vscode from "vscode";
import { planName } from "./plan-name.js";

/** What becomes of a plan that is kept open. */
export interface OpenPlanEvents {
  /** Its text is open, for the first time or again. */
  readonly opened: (document: vscode.TextDocument) => void;
  /** It can't be followed any more; why, without a period, such as `back.tileplan was deleted`. */
  readonly left: (why: string) => void;
}

/**
 * A plan whose text is kept open, with or without an editor, so that the server follows it on every
 * file system; its file is watched.
 */
export class OpenPlan implements vscode.Disposable {
  #gone = false;
  #disposed = false;
  readonly #subscriptions: readonly { dispose(): unknown }[];

  constructor(
    readonly uri: vscode.Uri,
    private readonly events: OpenPlanEvents,
  ) {
    const key = uri.toString();
    this.#subscriptions = [
      vscode.workspace.onDidCloseTextDocument((document) => {
        if (document.uri.toString() === key) void this.#keepOpen();
      }),
      ...this.#watchFile(),
    ];
    void this.#keepOpen();
  }

  dispose(): void {
    this.#disposed = true;
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #watchFile(): vscode.Disposable[] {
    if (this.uri.scheme === "untitled") return [];
    const folder = vscode.Uri.joinPath(this.uri, "..");
    const pattern = new vscode.RelativePattern(folder, planName(this.uri));
    const watcher = vscode.workspace.createFileSystemWatcher(pattern, false, true, false);
    return [
      watcher,
      watcher.onDidDelete(() => this.#leave("was deleted")),
      watcher.onDidCreate(() => {
        if (this.#gone) void this.#keepOpen();
      }),
    ];
  }

  async #keepOpen(): Promise<void> {
    if (this.#disposed) return;
    if (this.uri.scheme === "untitled" && !isOpen(this.uri)) {
      this.#leave("was closed");
      return;
    }
    try {
      this.#found(await vscode.workspace.openTextDocument(this.uri));
    } catch {
      this.#leave("can't be read");
    }
  }

  #found(document: vscode.TextDocument): void {
    if (this.#disposed) return;
    this.#gone = false;
    this.events.opened(document);
  }

  #leave(why: string): void {
    if (this.#disposed) return;
    this.#gone = true;
    this.events.left(`${planName(this.uri)} ${why}`);
  }
}

function isOpen(uri: vscode.Uri): boolean {
  return vscode.workspace.textDocuments.some(
    (document) => !document.isClosed && document.uri.toString() === uri.toString(),
  );
}
