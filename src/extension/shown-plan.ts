import * as vscode from "vscode";
import type { Picture } from "../service/index.js";
import { planName } from "./plan-name.js";
import type { PlanServer } from "./plan-server.js";

/** What is known of a shown plan: its newest picture, and why there is none newer. */
export interface PlanNews {
  readonly picture: Picture | null;
  readonly gone: string | null;
}

/**
 * A plan while a preview shows it. Its text is kept open, with or without an editor, so that the
 * server follows it on every file system; its file is watched.
 */
export class ShownPlan implements vscode.Disposable {
  #news: PlanNews = { picture: null, gone: null };
  #disposed = false;
  readonly #subscriptions: vscode.Disposable[];

  constructor(
    readonly uri: vscode.Uri,
    server: PlanServer,
    private readonly tell: (news: PlanNews) => void,
  ) {
    const key = uri.toString();
    this.#subscriptions = [
      server.onPicture((picture) => {
        if (picture.uri === key) this.#tell({ picture, gone: null });
      }),
      vscode.workspace.onDidCloseTextDocument((document) => {
        if (document.uri.toString() === key) void this.#keepOpen();
      }),
      ...this.#watchFile(),
    ];
    void this.#keepOpen().then(() => {
      if (!this.#disposed) this.#subscriptions.push(server.watch(key));
    });
  }

  get news(): PlanNews {
    return this.#news;
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
        if (this.#news.gone !== null) void this.#keepOpen();
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
      await vscode.workspace.openTextDocument(this.uri);
      if (this.#news.gone !== null) this.#tell({ ...this.#news, gone: null });
    } catch {
      this.#leave("can't be read");
    }
  }

  #leave(why: string): void {
    const last = this.#news.picture ? ": this is its last picture" : "";
    this.#tell({ ...this.#news, gone: `${planName(this.uri)} ${why}${last}.` });
  }

  #tell(news: PlanNews): void {
    if (this.#disposed) return;
    this.#news = news;
    this.tell(news);
  }
}

function isOpen(uri: vscode.Uri): boolean {
  return vscode.workspace.textDocuments.some(
    (document) => !document.isClosed && document.uri.toString() === uri.toString(),
  );
}
