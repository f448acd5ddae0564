import type { Expression, LetStatement } from "../syntax.js";
import { evaluate } from "./evaluate.js";
import type { Scope } from "./scope.js";

/** A let whose value waits for others: those of its names that are not looked at yet. */
interface Pending {
  readonly statement: LetStatement;
  readonly names: string[];
}

/**
 * Declares every `let` of a file, whatever their order. A circle is told once, at the let that closes it.
 * Walks with a list of its own instead of recursion, since a chain of lets may be long.
 */
export function resolveLets(statements: readonly LetStatement[], scope: Scope): void {
  const waiting = new Map<string, LetStatement>();
  for (const statement of statements) {
    const origin = scope.report.origin(statement);
    // Declared without a value for now, so that the name is known to be taken.
    if (scope.lets.declare(statement.name, { value: null, origin }, scope.report)) {
      waiting.set(statement.name.text, statement);
    }
  }
  for (const statement of waiting.values()) settle(statement, waiting, scope);
}

function settle(first: LetStatement, waiting: Map<string, LetStatement>, scope: Scope): void {
  const path = [begin(first)];
  const onPath = new Set([first.name.text]);
  while (path.length > 0) {
    const { statement, names } = path.at(-1)!;
    const name = names.pop();
    const next = name === undefined ? undefined : waiting.get(name);
    if (next && onPath.has(next.name.text)) {
      tellCircle(path, next.name.text, scope);
      for (const pending of path) waiting.delete(pending.statement.name.text);
      return;
    }
    if (next) {
      path.push(begin(next));
      onPath.add(next.name.text);
    } else if (name === undefined) {
      const value = evaluate(statement.value, scope);
      scope.lets.set(statement.name.text, { value, origin: scope.report.origin(statement) });
      waiting.delete(statement.name.text);
      onPath.delete(statement.name.text);
      path.pop();
    }
  }
}

function begin(statement: LetStatement): Pending {
  return { statement, names: namesIn(statement.value).reverse() };
}

function tellCircle(path: readonly Pending[], backTo: string, scope: Scope): void {
  const lets = path.map(({ statement }) => statement.name);
  const circle = lets.slice(lets.findIndex(({ text }) => text === backTo));
  const names = [...circle, circle[0]!].map(({ text }) => `\`${text}\``);
  const shown = names.length > 6 ? [...names.slice(0, 4), "…", names.at(-1)!] : names;
  const related = circle.slice(1, 6).map((name) => scope.report.place(name, "part of the circle"));
  const message = `found a length that is made of itself: ${shown.join(" needs ")}`;
  scope.report.tell("plan/let-circle", circle[0]!, message, { related });
}

function namesIn(expression: Expression, names: string[] = []): string[] {
  if (expression.kind === "name") names.push(expression.text);
  else if (expression.kind === "negation") namesIn(expression.operand, names);
  else if (expression.kind !== "literal") {
    namesIn(expression.first, names);
    for (const { operand } of expression.rest) namesIn(operand, names);
  }
  return names;
}
