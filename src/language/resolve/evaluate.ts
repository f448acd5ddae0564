import type { Fraction } from "../../measure/index.js";
import {
  add,
  divide,
  fraction,
  isUnwieldy,
  multiply,
  negate,
  NM_PER,
  subtract,
} from "../../measure/index.js";
import type { Span } from "../line-table.js";
import type { Expression, Literal, NameUse, Product, Sum } from "../syntax.js";
import type { Scope } from "./scope.js";

/**
 * What an expression comes to: a `bare` number, which becomes a length in the file's units where a length
 * is wanted; a `length` in nanometres, not rounded yet; or a `ratio`, a length over a length.
 */
export interface Value {
  readonly kind: "bare" | "length" | "ratio";
  readonly amount: Fraction;
}

type Operator = "+" | "-" | "*" | "/";

/** The exact value, or null where it has none (which is told, or has been told before). */
export function evaluate(expression: Expression, scope: Scope): Value | null {
  switch (expression.kind) {
    case "literal":
      return evaluateLiteral(expression);
    case "name":
      return evaluateName(expression, scope);
    case "negation": {
      const value = evaluate(expression.operand, scope);
      return value && { ...value, amount: negate(value.amount) };
    }
    case "sum":
    case "product":
      return evaluateRow(expression, scope);
  }
}

/** A bare number as a length in the file's units. */
export function asLength(value: Value, scope: Scope): Value {
  if (value.kind !== "bare") return value;
  const perUnit = fraction(BigInt(NM_PER[scope.units]));
  return { kind: "length", amount: multiply(value.amount, perUnit) };
}

function evaluateLiteral({ quantity }: Literal): Value | null {
  if (!quantity) return null;
  const { amount, unit } = quantity;
  if (unit === null) return { kind: "bare", amount };
  return { kind: "length", amount: multiply(amount, fraction(BigInt(NM_PER[unit]))) };
}

function evaluateName(name: NameUse, scope: Scope): Value | null {
  const declared = scope.lets.find(name.text);
  if (declared) return declared.value;
  scope.tellUnknownLet(name);
  return null;
}

function evaluateRow(row: Sum | Product, scope: Scope): Value | null {
  let value = evaluate(row.first, scope);
  for (const { operator, operand } of row.rest) {
    const right = evaluate(operand, scope);
    value = value && right && combine(operator, value, right, operand, scope);
  }
  return value;
}

function combine(operator: Operator, a: Value, b: Value, right: Span, scope: Scope): Value | null {
  const result = RULES[operator](a, b, scope);
  if (typeof result !== "string" && !isUnwieldy(result.amount)) return result;
  const message =
    typeof result === "string" ? result : "this sum needs more digits than any length";
  scope.report.tell("plan/arithmetic", right, message);
  return null;
}

type Combine = (a: Value, b: Value, scope: Scope) => Value | string;

const RULES: Readonly<Record<Operator, Combine>> = {
  "+": (a, b, scope) => combineLike(a, b, scope, add),
  "-": (a, b, scope) => combineLike(a, b, scope, subtract),
  "*": (a, b) => {
    if (a.kind === "length" && b.kind === "length") {
      return "found a length times a length, wanted a length times a plain number";
    }
    return { kind: kindOfProduct(a, b), amount: multiply(a.amount, b.amount) };
  },
  "/": (a, b, scope) => {
    if (b.amount.numerator === 0n) return "found a division by zero";
    if (b.kind !== "length") return { kind: a.kind, amount: divide(a.amount, b.amount) };
    if (a.kind === "ratio") return "found a plain number over a length, wanted a length over it";
    return { kind: "ratio", amount: divide(asLength(a, scope).amount, b.amount) };
  },
};

function combineLike(a: Value, b: Value, scope: Scope, operate: typeof add): Value | string {
  const kinds = [a.kind, b.kind];
  if (!kinds.includes("length")) {
    const kind = kinds.includes("ratio") ? "ratio" : "bare";
    return { kind, amount: operate(a.amount, b.amount) };
  }
  if (kinds.includes("ratio")) {
    return "found a length and a plain number (a length over a length), wanted two lengths";
  }
  return { kind: "length", amount: operate(asLength(a, scope).amount, asLength(b, scope).amount) };
}

function kindOfProduct(a: Value, b: Value): Value["kind"] {
  if (a.kind === "length" || b.kind === "length") return "length";
  return a.kind === "bare" || b.kind === "bare" ? "bare" : "ratio";
}
