import type { OldPlan, PlanDocument, PlanService, Workspace } from "../service/index.js";
import { pathOf } from "./addresses.js";
import { KnownFiles } from "./known-files.js";
import { DEEPEST_USE } from "./plan-desk.js";
import type { OldText } from "./protocol.js";

/** So many old plans, and files of so many revisions, are kept: those that were asked for last. */
const MOST_KEPT = 32;

interface Kept {
  readonly document: PlanDocument;
  readonly plan: OldPlan;
}

/** The plans that others are compared with, each solved once for each of its texts. */
export class OldPlans {
  readonly #plans = new Map<string, Kept>();
  /** The files of each revision. They never change. */
  readonly #revisions = new Map<string, KnownFiles>();

  constructor(
    private readonly service: PlanService,
    /** The files as they are now. */
    private readonly files: KnownFiles,
    private readonly readOld: (uri: string, revision: string) => Promise<string | null>,
  ) {}

  /** An old plan with all that it uses at hand; null when its file is gone. */
  async ready(old: OldText): Promise<OldPlan | null> {
    const files = old.revision === null ? this.files : this.#filesOf(old.revision);
    const text = old.text ?? (await this.#textNow(pathOf(old.uri)));
    if (text === null) return null;
    const { plan } = this.#planOf(old, text, files);
    for (let depth = 0; depth < DEEPEST_USE; depth++) {
      plan.prepare();
      if (!files.hasWanted) break;
      await files.settle();
    }
    return plan;
  }

  async #textNow(file: string): Promise<string | null> {
    const known = this.files.read(file);
    if (known !== null || !this.files.hasWanted) return known;
    await this.files.settle();
    return this.files.read(file);
  }

  #planOf({ uri, revision }: OldText, text: string, files: KnownFiles): Kept {
    const key = JSON.stringify([uri, revision, revision === null ? text : null]);
    const known = this.#plans.get(key);
    if (known?.document.text === text) return known;
    const document: PlanDocument = { uri, file: pathOf(uri), version: 0, text };
    const round: Workspace = {
      read: files.read,
      // A plan may use what it may use now.
      rootOf: this.files.rootOf,
      files: () => [],
      uriOf: files.uriOf,
    };
    const kept = { document, plan: this.service.oldPlan(document, round) };
    keep(this.#plans, key, kept);
    return kept;
  }

  #filesOf(revision: string): KnownFiles {
    const known = this.#revisions.get(revision);
    if (known) return known;
    const files = new KnownFiles({
      read: (uri) => this.readOld(uri, revision),
      find: () => Promise.resolve([]),
    });
    keep(this.#revisions, revision, files);
    return files;
  }
}

function keep<T>(all: Map<string, T>, key: string, value: T): void {
  all.delete(key);
  all.set(key, value);
  const [oldest] = all.keys();
  if (all.size > MOST_KEPT && oldest !== undefined) all.delete(oldest);
}
