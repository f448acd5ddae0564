import assert from "node:assert/strict";
import { compareScores, firstDifference, MEASURES } from "../../../src/solver/choose/compare.js";

const score = { slivers: 1, underHalf: 1, imbalance: 1, cuts: 1, tiles: 1, jointOver: 1 };

describe("comparing scores", () => {
  it("counts the measures in the order of the design", () => {
    MEASURES.forEach((measure, i) => {
      const better = { ...score, [measure]: 0 };
      const rest = Object.fromEntries(MEASURES.slice(i + 1).map((after) => [after, 99]));
      assert.ok(compareScores({ ...better, ...rest }, score) < 0, measure);
      assert.equal(firstDifference({ ...better, ...rest }, score), measure);
    });
  });

  it("finds no difference between equal scores", () => {
    assert.equal(compareScores(score, { ...score }), 0);
    assert.equal(firstDifference(score, { ...score }), null);
  });
});
