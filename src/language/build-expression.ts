import type { CstNode, IToken } from "chevrotain";
import { readQuantity } from "../measure/index.js";
import { nodeAt, nodesAt, spanOf, tokenAt, tokensAt } from "./cst.js";
import { endOf } from "./lines.js";
import type { Expression, Literal, NameUse } from "./syntax.js";
import type { SyntaxProblem } from "./syntax-problem.js";

/** Where a builder tells what it can't read. */
export type Problems = SyntaxProblem[];

/** An `expression` node as a tree in which `*` and `/` bind closer than `+` and `-`. */
export function buildExpression(node: CstNode, problems: Problems): Expression {
  const terms = nodesAt(node, "term").map((term) => buildTerm(term, problems));
  if (terms.length === 1) return terms[0]!;
  const operators = tokensAt(node, "Operator").map(({ image }) => image as Operator);
  const products: Product[] = [];
  const signs: ("+" | "-")[] = [];
  for (const [i, operand] of terms.entries()) {
    const operator = i === 0 ? "+" : operators[i - 1]!;
    if (operator === "*" || operator === "/") products.at(-1)!.rest.push({ operator, operand });
    else {
      products.push({ first: operand, rest: [] });
      signs.push(operator);
    }
  }
  const [first, ...others] = products.map(closeProduct);
  if (others.length === 0) return first!;
  const rest = others.map((operand, i) => ({ operator: signs[i + 1]!, operand }));
  return { kind: "sum", first: first!, rest, ...spanOf(node) };
}

type Operator = "+" | "-" | "*" | "/";

/** A product that terms are still added to. */
interface Product {
  readonly first: Expression;
  readonly rest: { readonly operator: "*" | "/"; readonly operand: Expression }[];
}

function closeProduct({ first, rest }: Product): Expression {
  const last = rest.at(-1);
  return last ? { kind: "product", first, rest, start: first.start, end: last.operand.end } : first;
}

function buildTerm(term: CstNode, problems: Problems): Expression {
  const operand = buildOperand(term, problems);
  if (tokenAt(term, "Sign")?.image !== "-") return operand;
  return { kind: "negation", operand, ...spanOf(term) };
}

function buildOperand(term: CstNode, problems: Problems): Expression {
  const inner = nodeAt(term, "expression");
  if (inner) return buildExpression(inner, problems);
  const length = tokenAt(term, "Length");
  return length ? buildLiteral(length, problems) : buildNameUse(tokenAt(term, "Name")!);
}

function buildNameUse(token: IToken): NameUse {
  return { kind: "name", text: token.image, start: token.startOffset, end: endOf(token) };
}

/** A literal; what can't be read in it is told at the part that is wrong. */
export function buildLiteral(token: IToken, problems: Problems): Literal {
  const { startOffset: start, image } = token;
  const literal = { kind: "literal", start, end: endOf(token) } as const;
  const reading = readQuantity(image);
  if (reading.ok) return { ...literal, quantity: reading.quantity };
  const { problem } = reading;
  problems.push({
    code: "syntax/length",
    message: problem.message,
    start: start + problem.start,
    end: start + problem.end,
  });
  return { ...literal, quantity: null };
}
