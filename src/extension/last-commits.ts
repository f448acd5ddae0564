import * as vscode from "vscode";
import type { OldText } from "../server/protocol.js";
import { LANGUAGE } from "./client-options.js";
import { type GitHistory, LAST } from "./git-history.js";
import type { OldVersion } from "./old-version.js";
import { isMissing } from "./open-git.js";
import type { PlanServer } from "./plan-server.js";
import { watchGit } from "./watch-git.js";

/** Git tells of many changes at once: it is asked when they rest, in milliseconds. */
const REST = 100;

/** The open plans as they were in the last commit; the server is told, for its lenses. */
export class LastCommits implements vscode.Disposable {
  readonly #known = new Map<string, OldVersion>();
  /** How often each plan was looked at. */
  readonly #looks = new Map<string, number>();
  readonly #changed = new vscode.EventEmitter<string>();
  readonly #subscriptions: readonly { dispose(): unknown }[];
  #resting: ReturnType<typeof setTimeout> | undefined;

  /** Tells the address of a plan whose last commit is another one now, or none. */
  readonly onDidChange = this.#changed.event;

  constructor(
    private readonly history: GitHistory,
    private readonly server: PlanServer,
  ) {
    this.#subscriptions = [
      this.#changed,
      watchGit(() => this.#lookSoon()),
      vscode.workspace.onDidOpenTextDocument((document) => void this.#look(document)),
      vscode.workspace.onDidCloseTextDocument(({ uri }) => this.#put(uri.toString(), null)),
    ];
    this.#lookAtAll();
  }

  /** null where there is none, or it isn't known yet. */
  of(uri: vscode.Uri): OldVersion | null {
    return this.#known.get(uri.toString()) ?? null;
  }

  dispose(): void {
    clearTimeout(this.#resting);
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #lookSoon(): void {
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => this.#lookAtAll(), REST);
  }

  #lookAtAll(): void {
    for (const document of vscode.workspace.textDocuments) void this.#look(document);
  }

  async #look(document: vscode.TextDocument): Promise<void> {
    if (document.languageId !== LANGUAGE || document.uri.scheme !== "file") return;
    const uri = document.uri.toString();
    const look = (this.#looks.get(uri) ?? 0) + 1;
    this.#looks.set(uri, look);
    const found = await this.history.at(document.uri, LAST);
    // An answer that was overtaken by a newer question is old.
    if (document.isClosed || this.#looks.get(uri) !== look) return;
    this.#put(uri, isMissing(found) ? null : found);
  }

  #put(uri: string, version: OldVersion | null): void {
    if (isSame(this.#known.get(uri)?.old ?? null, version?.old ?? null)) return;
    if (version) this.#known.set(uri, version);
    else this.#known.delete(uri);
    this.server.setLastCommit(uri, version?.old ?? null);
    this.#changed.fire(uri);
  }
}

function isSame(a: OldText | null, b: OldText | null): boolean {
  return a?.uri === b?.uri && a?.revision === b?.revision && a?.text === b?.text;
}
