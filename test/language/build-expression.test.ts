import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import type { Syntax } from "../../src/language/index.js";
import { told } from "./telling.js";

/** An expression with all its parentheses, to show how it binds. */
function shape(text: string): string {
  const [statement] = parse(`let it = ${text}\n`).statements;
  assert.ok(statement?.kind === "let");
  return shapeOf(statement.value, `let it = ${text}\n`);
}

function shapeOf(expression: Syntax.Expression, text: string): string {
  if (expression.kind === "literal" || expression.kind === "name") {
    return text.slice(expression.start, expression.end);
  }
  if (expression.kind === "negation") return `(-${shapeOf(expression.operand, text)})`;
  const first = shapeOf(expression.first, text);
  const rest = expression.rest.map(
    ({ operator, operand }) => ` ${operator} ${shapeOf(operand, text)}`,
  );
  return `(${first}${rest.join("")})`;
}

describe("an expression", () => {
  it("binds * and / closer than + and -", () => {
    assert.equal(shape("a + 2 * b - c / 3"), "(a + (2 * b) - (c / 3))");
    assert.equal(shape("2 * b"), "(2 * b)");
    assert.equal(shape("(a + 2) * b"), "((a + 2) * b)");
  });

  it("binds a sign closest", () => {
    assert.equal(shape("-a * b"), "((-a) * b)");
    assert.equal(shape("4 - -3/16"), "(4 - (-3/16))");
    assert.equal(shape("+3/16"), "3/16");
  });

  it("stays flat over a hundred thousand terms", () => {
    const { statements, problems } = parse(`let a = 1${" + 1".repeat(100_000)}\n`);
    assert.deepEqual(problems, []);
    assert.ok(statements[0]?.kind === "let" && statements[0].value.kind === "sum");
    assert.equal(statements[0].value.rest.length, 100_000);
  });

  it("tells a literal that can't be read, at the part that is wrong", () => {
    assert.deepEqual(told("let a = 2 * 5 8/7\n"), [
      "syntax/length [8/7] found `8/7` after a whole number, wanted a fraction under one",
    ]);
  });
});
