import type { Allow, AllowingBlock, Diagnostic, Plan } from "../model/index.js";
import type { RuleEntry } from "./rule.js";
import { ALLOW_UNKNOWN, ALLOW_UNUSED, TRADE_RULES } from "./table.js";

/** What is to be told of a plan's `allow` statements: those that name no rule, or silence nothing. */
export function checkAllows(plan: Plan, used: ReadonlySet<Allow>): Diagnostic[] {
  return blocksOf(plan)
    .flatMap((block) => block.allows)
    .flatMap((allow) => checkAllow(plan, allow, used));
}

function checkAllow(plan: Plan, allow: Allow, used: ReadonlySet<Allow>): Diagnostic[] {
  if (!TRADE_RULES.some((rule) => rule.code === allow.code)) {
    return [tell(ALLOW_UNKNOWN, allow, `no rule is called ${allow.code}${familyOf(allow.code)}`)];
  }
  // What a shared file allows may be needed by another plan.
  if (used.has(allow) || allow.origin.file !== plan.origin.file) return [];
  return [tell(ALLOW_UNUSED, allow, `nothing here needs ${allow.code} to be allowed`)];
}

function tell(entry: RuleEntry, allow: Allow, message: string): Diagnostic {
  const { file, head } = allow.origin;
  return { code: entry.code, severity: entry.severity, message, file, range: head };
}

/** The rules that begin alike, for a code that was mistyped behind the slash. */
function familyOf(code: string): string {
  const family = code.slice(0, code.indexOf("/") + 1);
  const alike = TRADE_RULES.filter((rule) => family !== "" && rule.code.startsWith(family));
  return alike.length === 0 ? "" : `; there are ${alike.map((rule) => rule.code).join(", ")}`;
}

/** Every block of a plan in which an `allow` may stand. */
function blocksOf(plan: Plan): AllowingBlock[] {
  const walls = plan.walls.flatMap((wall) => [wall, ...wall.openings, ...wall.lays]);
  return [plan, ...plan.tiles, ...plan.trims, ...walls];
}
