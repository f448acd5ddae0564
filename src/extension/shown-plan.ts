import * as vscode from "vscode";
import type { OldText } from "../server/protocol.js";
import type { Picture, PictureChanges } from "../service/index.js";
import type { LastCommits } from "./last-commits.js";
import { OpenPlan } from "./open-plan.js";
import type { PlanServer, Watch } from "./plan-server.js";

/** What is known of a shown plan: its newest picture, what changed in it, and why there is none newer. */
export interface PlanNews {
  readonly picture: Picture | null;
  readonly changes: PlanChanges | null;
  readonly gone: string | null;
}

/** What changed, and since when. */
export interface PlanChanges {
  readonly changes: PictureChanges;
  /** Such as `the last commit, 1a2b3c4 "Move the niche"`. */
  readonly since: string;
}

/** What a plan is shown with. */
export interface ShownWith {
  readonly server: PlanServer;
  readonly lastCommits: LastCommits;
  /** Whether changed pieces are marked. */
  readonly marked: boolean;
  /** Whether the room is shown unfolded. */
  readonly unfolded: boolean;
}

/** A plan while a preview shows it, and what has changed in it meanwhile. */
export class ShownPlan implements vscode.Disposable {
  #news: PlanNews = { picture: null, changes: null, gone: null };
  #marked: boolean;
  #unfolded: boolean;
  /** The text when the preview opened: what changes are told against where no commit has the plan. */
  #first: OldText | null = null;
  #watch: Watch | null = null;
  readonly #open: OpenPlan;
  readonly #subscriptions: readonly { dispose(): unknown }[];

  constructor(
    readonly uri: vscode.Uri,
    private readonly shownWith: ShownWith,
    private readonly tell: (news: PlanNews) => void,
  ) {
    const { server, lastCommits, marked, unfolded } = shownWith;
    this.#unfolded = unfolded;
    const key = uri.toString();
    this.#marked = marked;
    this.#subscriptions = [
      server.onPicture((picture) => {
        if (picture.uri === key) this.#tell({ ...this.#news, picture, gone: null });
      }),
      server.onChanges((changes) => {
        if (changes.uri === key && this.#marked) {
          this.#tell({ ...this.#news, changes: { changes, since: this.#since } });
        }
      }),
      lastCommits.onDidChange((changed) => {
        if (changed === key) this.#mark();
      }),
    ];
    this.#open = new OpenPlan(uri, {
      opened: (document) => this.#opened(document),
      left: (why) => this.#leave(why),
    });
  }

  get news(): PlanNews {
    return this.#news;
  }

  /** Whether changed pieces are marked. */
  set marked(marked: boolean) {
    this.#marked = marked;
    this.#mark();
  }

  /** Whether the room is shown unfolded. */
  set unfolded(unfolded: boolean) {
    this.#unfolded = unfolded;
    this.#watch?.unfold(unfolded);
  }

  dispose(): void {
    this.#open.dispose();
    this.#watch?.dispose();
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #opened(document: vscode.TextDocument): void {
    this.#first ??= { uri: this.uri.toString(), text: document.getText(), revision: null };
    this.#watch ??= this.shownWith.server.watch(this.uri.toString(), {
      marks: this.#against,
      room: this.#unfolded,
    });
    if (this.#news.gone !== null) this.#tell({ ...this.#news, gone: null });
  }

  #mark(): void {
    this.#watch?.mark(this.#against);
    if (!this.#marked && this.#news.changes) this.#tell({ ...this.#news, changes: null });
  }

  get #against(): OldText | null {
    if (!this.#marked) return null;
    return this.shownWith.lastCommits.of(this.uri)?.old ?? this.#first;
  }

  get #since(): string {
    return this.shownWith.lastCommits.of(this.uri)?.words ?? "this preview opened";
  }

  #leave(why: string): void {
    const last = this.#news.picture ? ": this is its last picture" : "";
    this.#tell({ ...this.#news, gone: `${why}${last}.` });
  }

  #tell(news: PlanNews): void {
    this.#news = news;
    this.tell(news);
  }
}
