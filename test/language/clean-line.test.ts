import assert from "node:assert/strict";
import { planOf, told } from "./telling.js";

describe("a line's characters", () => {
  it("are told once for a run of strange ones, and the rest of the line is kept", () => {
    const text = 'plan "A" %%%\n';
    assert.deepEqual(told(text), ["syntax/character [%%%] found `%%%`, which no statement has"]);
    assert.equal(planOf(text).title, "A");
  });

  it("are told once for a line", () => {
    assert.deepEqual(told("units % inch % $\n"), [
      "syntax/character [%] found `%`, which no statement has",
    ]);
  });

  const meant: Record<string, string> = { "×": "x", "–": "-", "½": "1/2", "″": '"', "÷": "/" };
  for (const [character, wanted] of Object.entries(meant)) {
    it(`that stand for others are told with what was meant: ${character}`, () => {
      const [message] = told(`let a = 5 ${character} 3\n`);
      assert.equal(
        message,
        `syntax/character [${character}] found \`${character}\`, wanted \`${wanted}\``,
      );
    });
  }

  it("of a text that isn't closed are told, and the text is kept", () => {
    const text = 'plan "Alder Court\nunits mm\n';
    assert.deepEqual(told(text), [
      'syntax/text ["Alder Court] the text is not closed: its `"` is missing',
    ]);
    assert.deepEqual([planOf(text).title, planOf(text).units], ["Alder Court", "mm"]);
  });

  it("may be forty parentheses in one another, but no more", () => {
    const nested = (depth: number): string => `let a = ${"(".repeat(depth)}1${")".repeat(depth)}\n`;
    assert.deepEqual(told(nested(40)), []);
    assert.deepEqual(told(nested(41)), [
      "syntax/nesting [(] found more than 40 parentheses in one another, wanted a sum in several `let`",
    ]);
    assert.equal(told(nested(50_000)).length, 1);
  });
});
