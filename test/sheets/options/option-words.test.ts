import assert from "node:assert/strict";
import { leftWords, optionStart, standingWords } from "../../../src/sheets/options/option-words.js";
import { optionsOf } from "../../../src/solver/index.js";
import { bench, OPEN, STATED } from "./bench.js";

function found(text: string) {
  const { solved, wall } = bench(text);
  return optionsOf(solved.plan, wall)!;
}

describe("words of options", () => {
  it("say out of how many starts, and how the plan's own stands", () => {
    assert.match(leftWords(found(OPEN)), /^chosen out of \d+ starts$/);
    const stated = found(STATED);
    const has = stated.options.findIndex(({ had }) => had);
    const letter = "ABCDEFGH"[has]!;
    assert.match(leftWords(stated), new RegExp(`^its start is written down \\(${letter}\\)`));
  });

  it("tell a start as the plan would state it", () => {
    const own = found(STATED).options.find(({ had }) => had)!;
    const words = "across full tile from left, up full course from bottom, joint 1/8";
    assert.equal(optionStart(own, "inch"), words);
  });

  it("tell on what an option falls behind the best", () => {
    const options = found(STATED);
    for (const [i, { behind, had }] of options.options.entries()) {
      const words = standingWords(options, i, "inch");
      assert.equal(words.startsWith("what the plan has; "), had);
      if (i === 0) assert.match(words, /the best$/);
      else assert.match(words, behind ? /behind A at [a-z ]+: .* against / : /as good as A$/);
    }
  });
});
