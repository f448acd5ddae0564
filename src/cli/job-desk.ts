import { compare, type Comparison, isEmpty, overlayOf, sideBySide } from "../compare/index.js";
import { type Outcome, run } from "../engine.js";
import type { Diagnostic } from "../model/index.js";
import { Failure } from "./failure.js";
import { inReadingOrder } from "./findings.js";
import { PlanFiles } from "./plan-files.js";
import type { PlanPair } from "./plan-pairs.js";

/** One plan's work, which can be done in a thread of its own. */
export type Job =
  | { readonly kind: "check"; readonly file: string }
  | { readonly kind: "compare"; readonly pair: PlanPair };

/** What all jobs of a run share. */
export interface Setting {
  readonly folder: string;
  /** The folder that `use` may not leave; null to find it. */
  readonly root: string | null;
  /** The commits to read from; null for the files as they are. */
  readonly git: { readonly top: string; readonly from: string; readonly to: string | null } | null;
  /** Whether pictures of a comparison are wanted. */
  readonly pictures: boolean;
}

export type Answer = CheckAnswer | CompareAnswer | SameAnswer | FailedAnswer;

export interface CheckAnswer {
  readonly kind: "check";
  readonly diagnostics: readonly Diagnostic[];
}

export interface CompareAnswer {
  readonly kind: "compare";
  readonly comparison: Comparison;
  /** Whether both texts are the same to the letter. */
  readonly sameText: boolean;
  /** null where none were asked for, or nothing changed. */
  readonly pictures: Pictures | null;
}

/** The same text, and nothing used that could differ: it need not be laid. */
export interface SameAnswer {
  readonly kind: "same";
}

export interface FailedAnswer {
  readonly kind: "failed";
  readonly message: string;
  readonly hint: string | null;
}

/** As SVG. */
export interface Pictures {
  readonly overlay: string;
  /** A picture for each wall that changed. */
  readonly sides: readonly { readonly wall: string; readonly svg: string }[];
}

/** A statement that brings another file. */
const USES = /^\s*use\b/m;

interface Reader {
  open(file: string): string;
  sourceOf(file: string): ReturnType<PlanFiles["sourceOf"]>;
  faultsOf(file: string): readonly Diagnostic[];
  /** Reads many files at once, where that is cheaper. */
  fetch?(files: readonly string[]): void;
}

/** Does jobs one after the other, and keeps what several plans read. Structured data in and out. */
export class JobDesk {
  readonly #setting: Setting;
  readonly #plans: PlanFiles;
  readonly #before: Reader;
  readonly #after: Reader;

  private constructor(setting: Setting, before: Reader | null, after: Reader | null) {
    this.#setting = setting;
    this.#plans = new PlanFiles(setting.folder, setting.root);
    this.#before = before ?? this.#plans;
    this.#after = after ?? this.#plans;
  }

  /** git is loaded only where revisions are read: starting other programs costs a start of its own. */
  static async open(setting: Setting): Promise<JobDesk> {
    const { git } = setting;
    if (!git) return new JobDesk(setting, null, null);
    const { Git } = await import("./git.js");
    const { RevisionFiles } = await import("./revision-files.js");
    const at = (commit: string) => new RevisionFiles(new Git(git.top), git.top, commit);
    return new JobDesk(setting, at(git.from), git.to === null ? null : at(git.to));
  }

  async answer(jobs: readonly Job[]): Promise<Answer[]> {
    const pairs = jobs.flatMap((job) => (job.kind === "compare" ? [job.pair] : []));
    this.#before.fetch?.(pairs.flatMap(({ before }) => before ?? []));
    this.#after.fetch?.(pairs.flatMap(({ after }) => after ?? []));
    const answers: Answer[] = [];
    for (const job of jobs) answers.push(await this.#answerOne(job));
    return answers;
  }

  async #answerOne(job: Job): Promise<Answer> {
    try {
      return job.kind === "check" ? this.#check(job.file) : await this.#compare(job.pair);
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      return { kind: "failed", message: error.message, hint: error.hint };
    }
  }

  #check(file: string): CheckAnswer {
    const { diagnostics } = run(this.#plans.open(file), this.#plans.sourceOf(file));
    const faults = [file, ...this.#plans.used].flatMap((each) => this.#plans.faultsOf(each));
    return { kind: "check", diagnostics: [...diagnostics, ...faults] };
  }

  async #compare(pair: PlanPair): Promise<CompareAnswer | SameAnswer> {
    if (pair.before !== null && pair.after !== null) {
      const text = this.#after.open(pair.after);
      if (!USES.test(text) && this.#before.open(pair.before) === text) return { kind: "same" };
    }
    const old = pair.before === null ? null : tell(this.#before, pair.before);
    const now = pair.after === null ? null : tell(this.#after, pair.after, old?.solved);
    const { before, after } = sidesOf(old, now);
    const comparison = compare(before, after);
    const sameText = pair.before !== null && pair.after !== null && before.text === after.text;
    const draws = this.#setting.pictures && !isEmpty(comparison);
    const pictures = draws ? await drawBoth(before, after) : null;
    return { kind: "compare", comparison, sameText, pictures };
  }
}

interface Told {
  readonly text: string;
  readonly solved: Outcome["solved"];
  readonly diagnostics: readonly Diagnostic[];
}

/** Both plans; one that isn't there is the other without its walls. */
function sidesOf(before: Told | null, after: Told | null): { before: Told; after: Told } {
  const there = (after ?? before)!;
  const bare = { plan: { ...there.solved.plan, walls: [] }, walls: [] };
  const nothing = { text: "", solved: bare, diagnostics: [] };
  return { before: before ?? nothing, after: after ?? nothing };
}

/** `before` is what the plan was, of which it may share walls. */
function tell(reader: Reader, file: string, before?: Told["solved"]): Told {
  const text = reader.open(file);
  const { solved, diagnostics } = run(text, reader.sourceOf(file), before);
  const all = inReadingOrder([...reader.faultsOf(file), ...diagnostics], [file]);
  return { text, solved, diagnostics: all };
}

async function drawBoth(before: Told, after: Told): Promise<Pictures> {
  const { drawHeadless, drawOverlayHeadless } = await import("../drawing/headless.js");
  return {
    overlay: drawOverlayHeadless(overlayOf(before, after)),
    sides: sideBySide(before, after).map(({ wall, scene }) => ({
      wall,
      svg: drawHeadless(scene),
    })),
  };
}
