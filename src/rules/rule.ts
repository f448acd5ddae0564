import type { AllowingBlock, LimitName, Origin, Severity } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";

/** What a rule found: which part of the plan made it, in words, and the pieces concerned. */
export interface Finding {
  /** The statement that made it. */
  readonly origin: Origin;
  /** The blocks in which an `allow` may silence it, innermost first; the plan's own is added. */
  readonly blocks: readonly AllowingBlock[];
  /** What was found and what is wanted, in the plan's units. */
  readonly message: string;
  /** Ids of the pieces concerned. */
  readonly pieces?: readonly string[];
  /** Where it is not the rule's own. */
  readonly severity?: Severity;
}

/** What a rule is, for help and exports. */
export interface RuleEntry {
  /** Stable, such as `cut/sliver`. */
  readonly code: string;
  /** The severity of most of its findings. */
  readonly severity: Severity;
  /** What it tells, in one line. */
  readonly title: string;
  /** The published source, or "common practice". */
  readonly source: string;
  /** The name in `rules { ... }` that sets its limit or turns it off; null when only `allow` silences it. */
  readonly limit: LimitName | null;
  /** Whether it speaks of what is set itself, or of joints that can be left open between what is set: the finding says all of it. */
  readonly ofSet?: true;
}

export interface Rule extends RuleEntry {
  /**
   * Whether it is asked of the surfaces inside openings too: of each, or of those only that the plan lays
   * otherwise than the wall. Not at all where it says nothing of them.
   */
  readonly insides?: "each" | "own lay";
  /** What it finds on one wall, in a stable order. Not asked when its limit is `off`. */
  check(wall: SolvedWall, plan: SolvedPlan): Finding[];
}
