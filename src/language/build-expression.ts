import type { CstNode, IToken } from "chevrotain";
import { readQuantity } from "../measure/index.js";
import { nodeAt, nodesAt, spanOf, tokenAt, tokensAt } from "./cst.js";
import { endOf } from "./lines.js";
import type { Expression, Literal, NameUse } from "./syntax.js";
import type { SyntaxProblem } from "./syntax-problem.js";

/** Where a builder tells what it can't read. */
export type Problems = SyntaxProblem[];

/** The expression of a `sum` in the parser's tree. */
export function buildExpression(sum: CstNode, problems: Problems): Expression {
  const [first, ...others] = nodesAt(sum, "product").map((node) => buildProduct(node, problems));
  if (others.length === 0) return first!;
  const operators = tokensAt(sum, "operator");
  const rest = others.map((operand, i) => ({
    operator: operators[i]!.image as "+" | "-",
    operand,
  }));
  return { kind: "sum", first: first!, rest, ...spanOf(sum) };
}

function buildProduct(product: CstNode, problems: Problems): Expression {
  const [first, ...others] = nodesAt(product, "signed").map((node) => buildSigned(node, problems));
  if (others.length === 0) return first!;
  const operators = tokensAt(product, "operator");
  const rest = others.map((operand, i) => ({
    operator: operators[i]!.image as "*" | "/",
    operand,
  }));
  return { kind: "product", first: first!, rest, ...spanOf(product) };
}

function buildSigned(signed: CstNode, problems: Problems): Expression {
  const operand = buildAtom(nodeAt(signed, "atom")!, problems);
  if (tokenAt(signed, "sign")?.image !== "-") return operand;
  return { kind: "negation", operand, ...spanOf(signed) };
}

function buildAtom(atom: CstNode, problems: Problems): Expression {
  const inner = nodeAt(atom, "sum");
  if (inner) return buildExpression(inner, problems);
  const length = tokenAt(atom, "Length");
  return length ? buildLiteral(length, problems) : buildNameUse(tokenAt(atom, "Name")!);
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
