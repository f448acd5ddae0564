import type { Connection } from "vscode-languageserver";
import type { ChangeLens, PlanDocument } from "../service/index.js";
import { pathOf } from "./addresses.js";
import type { OldPlans } from "./old-plans.js";
import type { PlanDesk } from "./plan-desk.js";
import {
  CHANGES,
  type ChangesNotice,
  COMPARISON,
  type ComparisonNotice,
  type OldText,
  type WatchComparison,
} from "./protocol.js";

/** What clients want to know of changes: lenses, marks in a picture, whole comparisons. */
export class ChangeDesk {
  readonly #last = new Map<string, OldText>();
  readonly #marks = new Map<string, OldText>();
  readonly #watched = new Map<number, WatchComparison & { readonly old: OldText }>();

  constructor(
    private readonly connection: Connection,
    private readonly desk: PlanDesk,
    private readonly oldPlans: OldPlans,
  ) {}

  setLast(uri: string, old: OldText | null): void {
    put(this.#last, uri, old);
  }

  setMarks(uri: string, old: OldText | null): void {
    put(this.#marks, uri, old);
  }

  watch(watched: WatchComparison): void {
    const { id, old } = watched;
    put(this.#watched, id, old && { ...watched, old });
  }

  /** The plans that are compared with a file as it is now. */
  comparedWith(file: string): string[] {
    return [...this.#watched.values()]
      .filter(({ old }) => old.revision === null && pathOf(old.uri) === file)
      .map(({ uri }) => uri);
  }

  async lenses(document: PlanDocument): Promise<ChangeLens[]> {
    const last = this.#last.get(document.uri);
    const old = last && (await this.oldPlans.ready(last));
    return old ? this.desk.service.changeLenses(document, old) : [];
  }

  /** Tells what a document changes, wherever that is watched. */
  async tell(document: PlanDocument): Promise<void> {
    const marks = this.#marks.get(document.uri);
    if (marks) await this.#tellMarks(document, marks);
    for (const watched of [...this.#watched.values()]) {
      if (watched.uri === document.uri) await this.#tellComparison(document, watched);
    }
  }

  async #tellMarks(document: PlanDocument, marks: OldText): Promise<void> {
    const old = await this.oldPlans.ready(marks);
    if (!old || !this.#isNewest(document)) return;
    const changes: ChangesNotice | null = this.desk.service.pictureChanges(document, old);
    if (changes) await this.connection.sendNotification(CHANGES, changes);
  }

  async #tellComparison(
    document: PlanDocument,
    watched: WatchComparison & { readonly old: OldText },
  ): Promise<void> {
    const { id, old, look } = watched;
    const plan = await this.oldPlans.ready(old);
    // Meanwhile another look may be wanted, or none any more: that is told in its turn.
    if (!plan || !this.#isNewest(document) || this.#watched.get(id) !== watched) return;
    const comparison = this.desk.service.comparison(document, plan, look);
    const notice: ComparisonNotice = { id, comparison };
    await this.connection.sendNotification(COMPARISON, notice);
  }

  #isNewest(document: PlanDocument): boolean {
    return this.desk.newest(document.uri) === document;
  }
}

function put<Key, T>(all: Map<Key, T>, key: Key, value: T | null): void {
  if (value === null) all.delete(key);
  else all.set(key, value);
}
