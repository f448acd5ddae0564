import assert from "node:assert/strict";
import { compareScores, firstDifference, MEASURES } from "../../../src/solver/choose/compare.js";

const score = { slivers: 2, underHalf: 2, imbalance: 2, cuts: 2, tiles: 2, jointOver: 2 };

describe("comparing scores", () => {
  it("counts the measures in the order of the design", () => {
    MEASURES.forEach((measure, i) => {
      const better = { ...score, [measure]: 1 };
      const rest = Object.fromEntries(MEASURES.slice(i + 1).map((after) => [after, 99]));
      assert.ok(compareScores({ ...better, ...rest }, score) < 0, measure);
      assert.equal(firstDifference({ ...better, ...rest }, score), measure);
    });
  });

  it("takes any tile over none: a bare wall has no slivers either", () => {
    const bare = { slivers: 0, underHalf: 0, imbalance: 0, cuts: 0, tiles: 0, jointOver: 0 };
    assert.ok(compareScores(score, bare) < 0);
  });

  it("finds no difference between equal scores", () => {
    assert.equal(compareScores(score, { ...score }), 0);
    assert.equal(firstDifference(score, { ...score }), null);
  });
});
