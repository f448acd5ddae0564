import type { Allow, AllowingBlock, Diagnostic } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import { setWords } from "../model/index.js";
import { beyondMending } from "./beyond-mending.js";
import { checkAllows } from "./check-allows.js";
import type { Finding, Rule } from "./rule.js";
import { TRADE_RULES } from "./table.js";

/**
 * What the rules of the trade say of a solved plan, in the order of the text, then of the codes.
 * Findings that an `allow` silences stay in the list as information, with the reason.
 */
export function check(solved: SolvedPlan): Diagnostic[] {
  const used = new Set<Allow>();
  const rules = TRADE_RULES.filter((rule) => !isOff(rule, solved));
  const found = solved.walls.flatMap((wall) =>
    rules.flatMap((rule) =>
      rule.check(wall, solved).map((finding) => diagnose(rule, wall, solved, finding, used)),
    ),
  );
  return [...found, ...checkAllows(solved.plan, used)].sort(inOrder(solved.plan.origin.file));
}

function isOff({ limit }: Rule, { plan }: SolvedPlan): boolean {
  return limit !== null && plan.limits[limit]?.kind === "off";
}

function diagnose(
  rule: Rule,
  solved: SolvedWall,
  { plan }: SolvedPlan,
  finding: Finding,
  used: Set<Allow>,
): Diagnostic {
  const allow = allowOf(rule.code, [...finding.blocks, plan]);
  if (allow) used.add(allow);
  const { wall } = solved;
  const set = rule.ofSet ? null : beyondMending(solved, finding);
  return {
    code: rule.code,
    severity: allow || set !== null ? "information" : (finding.severity ?? rule.severity),
    message: set === null ? finding.message : `${finding.message}${setWords(set)}`,
    file: finding.origin.file,
    range: finding.origin.head,
    wall: wall.name,
    ...(finding.pieces ? { pieces: finding.pieces } : {}),
    source: rule.source,
    ...(allow ? { allowed: allow.reason } : {}),
    ...(set === null ? {} : { set }),
  };
}

/** The innermost `allow` of a rule. */
function allowOf(code: string, blocks: readonly AllowingBlock[]): Allow | null {
  for (const block of blocks) {
    const allow = block.allows.find((candidate) => candidate.code === code);
    if (allow) return allow;
  }
  return null;
}

/** By file (the plan's own first), place and code; sorting keeps the order of equals. */
function inOrder(own: string): (a: Diagnostic, b: Diagnostic) => number {
  const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  const fileRank = (file: string) => (file === own ? 0 : 1);
  return (a, b) =>
    fileRank(a.file) - fileRank(b.file) ||
    compare(a.file, b.file) ||
    a.range.start.line - b.range.start.line ||
    a.range.start.character - b.range.start.character ||
    compare(a.code, b.code);
}
