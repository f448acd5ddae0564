import type { Span, Syntax } from "../language/index.js";
import type { Position, SourceRange } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import { expressionsOf, statementsAt } from "./walk-tree.js";
import { wordAt } from "./word-at.js";

/** The stretches round a place, from the smallest out: word, expression, statement, inside of the block, block, all. */
export function selectionsAt({ tree, document }: DocumentState, position: Position): SourceRange[] {
  const offset = tree.lines.offset(position);
  const spans: Span[] = [{ start: 0, end: document.text.length }];
  for (const statement of statementsAt(tree, offset)) {
    spans.push(statement);
    const inside = "body" in statement ? bodySpan(statement.body) : null;
    if (inside) spans.push(inside);
    for (const expression of expressionsOf(statement)) spans.push(...partsAt(expression, offset));
    spans.push(statement.head);
  }
  spans.push(wordAt(document.text, offset));
  return nested(spans, offset).map((span) => tree.lines.range(span));
}

function bodySpan(body: readonly Syntax.Statement[]): Span | null {
  const [first, last] = [body[0], body.at(-1)];
  return first && last ? { start: first.start, end: last.end } : null;
}

/** An expression and those inside it that hold the offset, outermost first. */
function partsAt(expression: Syntax.Expression, offset: number): Span[] {
  if (offset < expression.start || offset > expression.end) return [];
  switch (expression.kind) {
    case "literal":
    case "name":
      return [expression];
    case "negation":
      return [expression, ...partsAt(expression.operand, offset)];
    default: {
      const operands = [expression.first, ...expression.rest.map(({ operand }) => operand)];
      return [expression, ...operands.flatMap((operand) => partsAt(operand, offset))];
    }
  }
}

/** Those that hold the offset, smallest first, each once and each inside the next. */
function nested(spans: readonly Span[], offset: number): Span[] {
  const holding = spans
    .filter(({ start, end }) => start <= offset && offset <= end)
    .sort((a, b) => a.end - a.start - (b.end - b.start));
  const kept: Span[] = [];
  for (const span of holding) {
    const last = kept.at(-1);
    if (!last || isAround(span, last)) kept.push(span);
  }
  return kept;
}

/** Whether a stretch holds another and is longer. */
function isAround(outer: Span, inner: Span): boolean {
  const holds = outer.start <= inner.start && outer.end >= inner.end;
  return holds && outer.end - outer.start > inner.end - inner.start;
}
