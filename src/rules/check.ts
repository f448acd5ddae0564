import { type Allow, type AllowingBlock, type Diagnostic, faceWords } from "../model/index.js";
import { isInside, type SolvedInside, type SolvedPlan, type SolvedWall } from "../solver/index.js";
import { beyondMending } from "./beyond-mending.js";
import { checkAllows } from "./check-allows.js";
import type { Finding, Rule } from "./rule.js";
import { setWords } from "./set-words.js";
import { openingName } from "./words.js";
import { TRADE_RULES } from "./table.js";

/**
 * What the rules of the trade say of a solved plan, in the order of the text, then of the codes.
 * Findings that an `allow` silences stay in the list as information, with the reason.
 */
export function check(solved: SolvedPlan): Diagnostic[] {
  const used = new Set<Allow>();
  const rules = TRADE_RULES.filter((rule) => !isOff(rule, solved));
  const ask = (rule: Rule, surface: SolvedWall): Diagnostic[] =>
    rule.check(surface, solved).map((finding) => diagnose(rule, surface, solved, finding, used));
  const found = solved.walls.flatMap((wall) => [
    ...rules.flatMap((rule) => ask(rule, wall)),
    ...wall.insides.flatMap((inside) =>
      rules.filter((rule) => isAskedInside(rule, inside)).flatMap((rule) => ask(rule, inside)),
    ),
  ]);
  return [...found, ...checkAllows(solved.plan, used)].sort(inOrder(solved.plan.origin.file));
}

function isOff({ limit }: Rule, { plan }: SolvedPlan): boolean {
  return limit !== null && plan.limits[limit]?.kind === "off";
}

function isAskedInside({ insides }: Rule, { opening, face }: SolvedInside): boolean {
  if (insides === "own lay") return opening.inside?.lays[face] !== undefined;
  return insides === "each";
}

/** `niche shelf, left side: ` before what is found there. */
function placeWords(surface: SolvedWall): string {
  if (!isInside(surface)) return "";
  return `${openingName(surface.opening)}, ${faceWords(surface.face)}: `;
}

function diagnose(
  rule: Rule,
  surface: SolvedWall,
  { plan }: SolvedPlan,
  finding: Finding,
  used: Set<Allow>,
): Diagnostic {
  const allow = allowOf(rule.code, [...finding.blocks, plan]);
  if (allow) used.add(allow);
  const set = rule.ofSet ? null : beyondMending(surface, finding);
  return {
    code: rule.code,
    severity: allow || set !== null ? "information" : (finding.severity ?? rule.severity),
    message: placeWords(surface) + finding.message + (set === null ? "" : setWords(set)),
    file: finding.origin.file,
    range: finding.origin.head,
    wall: surface.wall.name,
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
