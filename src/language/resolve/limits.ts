import type { Limit, LimitName, Limits } from "../../model/index.js";
import { LIMITS } from "../../model/index.js";
import { didYouMean } from "../nearest.js";
import type { Expression, LimitStatement, RulesStatement } from "../syntax.js";
import { evaluate } from "./evaluate.js";
import { lengthOf } from "./lengths.js";
import { ratioOf } from "./ratio.js";
import type { Scope } from "./scope.js";

/** The limits of all `rules { ... }`; of one stated twice, the first. */
export function resolveLimits(blocks: readonly RulesStatement[], scope: Scope): Limits {
  const limits: Partial<Record<LimitName, Limit>> = {};
  const stated = new Map<string, LimitStatement>();
  for (const statement of blocks.flatMap(({ body }) => body)) {
    if (statement.kind === "broken") continue;
    const { text } = statement.name;
    const first = stated.get(text);
    if (!isLimitName(text)) tellUnknown(statement, scope);
    else if (first) tellTwice(statement, first, scope);
    else {
      stated.set(text, statement);
      const limit = limitOf(statement, text, scope);
      if (limit) limits[text] = limit;
    }
  }
  return limits;
}

function isLimitName(name: string): name is LimitName {
  return Object.hasOwn(LIMITS, name);
}

/** null for `on`, which restores the default, and for what can't be understood. */
function limitOf(statement: LimitStatement, name: LimitName, scope: Scope): Limit | null {
  const { value } = statement;
  if (value === "off") return { kind: "off" };
  if (value === "on") return null;
  const { shape } = LIMITS[name];
  if (shape === "switch") {
    const message = `found a number for \`${name}\`, wanted \`on\` or \`off\``;
    scope.report.tell("plan/limit", value, message);
    return null;
  }
  if (shape === "ratio") return ratioLimit(value, name, scope);
  const nm = lengthOf(value, "not-negative", scope);
  return nm === null ? null : { kind: "length", nm };
}

function ratioLimit(expression: Expression, name: LimitName, scope: Scope): Limit | null {
  const value = evaluate(expression, scope);
  if (!value) return null;
  const ratio = value.kind === "length" ? null : ratioOf(value.amount);
  if (ratio && ratio.p >= 0) return { kind: "ratio", ...ratio };
  const message = `found no ratio for \`${name}\`, wanted one, such as 1/3`;
  scope.report.tell("plan/limit", expression, message);
  return null;
}

function tellUnknown({ name }: LimitStatement, scope: Scope): void {
  const guess = didYouMean(name.text, Object.keys(LIMITS));
  const wanted = `wanted one of ${Object.keys(LIMITS).join(", ")}`;
  scope.report.tell(
    "plan/limit",
    name,
    `found no limit called \`${name.text}\`, ${wanted}${guess}`,
  );
}

function tellTwice(statement: LimitStatement, first: LimitStatement, { report }: Scope): void {
  const message = `found \`${statement.name.text}\` again, wanted it once`;
  const related = [report.place(first.head, "the first one")];
  report.tell("plan/said-twice", statement.head, message, { related });
}
