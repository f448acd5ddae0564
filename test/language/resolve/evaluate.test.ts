import assert from "node:assert/strict";
import { costOf, INCH, planOf, told } from "../telling.js";

/** The bed, in inches, of a plan with these lines. */
function inches(expression: string, lets = ""): number {
  const text = `${lets}\nbed ${expression}\n`;
  assert.deepEqual(told(text), []);
  return planOf(text).bed / INCH;
}

const LETS = "let a = 10\nlet b = 4\nlet w = 60in\nlet p = 3in";

describe("an expression", () => {
  const values: Record<string, number> = {
    "a + b": 14,
    "a - b * 2": 2,
    "(a - b) * 2": 12,
    "a / 4": 2.5,
    "2 * a": 20,
    "60in / 4": 15,
    "1 / 4 + 1/4": 0.5,
    "w / p * p": 60,
    "(w / p - 1) * p": 57,
    "60 / p * p": 60,
    "b * p": 12,
    "w / b": 15,
    "a * b": 40,
    "2 * w / p * 1in": 40,
    "-(b - a)": 6,
    "25.4mm + 1": 2,
    "1ft + 1": 13,
  };
  for (const [expression, wanted] of Object.entries(values)) {
    it(`${expression} comes to ${wanted} in`, () => assert.equal(inches(expression, LETS), wanted));
  }

  it("is rounded once, at its end: three thirds are one", () => {
    assert.equal(inches("1/3 + 1/3 + 1/3"), 1);
    assert.equal(inches("(10 / 3) * 3"), 10);
  });

  const faults: Record<string, string> = {
    "w * p":
      "plan/arithmetic [p] found a length times a length, wanted a length times a plain number",
    "w / 0": "plan/arithmetic [0] found a division by zero",
    "w / (p - 3)": "plan/arithmetic [(p - 3)] found a division by zero",
    "w / p":
      "plan/arithmetic [w / p] found a plain number (a length over a length), wanted a length",
    "w / p + w":
      "plan/arithmetic [w] found a length and a plain number (a length over a length), wanted two lengths",
    "w / p / p": "plan/arithmetic [p] found a plain number over a length, wanted a length over it",
    "c + 1": "plan/name-unknown [c] found no length called `c`",
  };
  for (const [expression, wanted] of Object.entries(faults)) {
    it(`${expression} is told`, () => {
      assert.deepEqual(told(`${LETS}\nbed ${expression}\n`), [
        wanted.replace("[(p - 3)]", "[p - 3]"),
      ]);
    });
  }

  it("that needs more digits than any length is told before it takes long", () => {
    const squares = Array.from({ length: 40 }, (_, i) => `let a${i + 1} = a${i} * a${i}\n`).join(
      "",
    );
    const text = `let a0 = 1/997\n${squares}bed a40\n`;
    assert.ok(costOf(() => told(text)) < 1000);
    const messages = told(text);
    assert.equal(messages.length, 1);
    assert.match(messages[0]!, /this sum needs more digits than any length$/);
  });
});
