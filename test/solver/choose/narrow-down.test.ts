import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { compareScores } from "../../../src/solver/choose/index.js";
import { narrowDown } from "../../../src/solver/choose/narrow-down.js";
import { laidScore } from "./laid-score.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

describe("narrowing down to the best start", () => {
  it("finds one better than a bad one, with the score that its pieces have, and then none", () => {
    const one = oneWall({
      face: [inches(5.875), inches(2.875)],
      size: [inches(31), inches(20.5)],
      holes: [[inches(12.3), inches(9.1), inches(4.5)]],
    });
    const field = fieldOf(one.plan, one.wall, one.lay, SIXTEENTH);
    const bad = laidScore(one, SIXTEENTH, inches(5.5), inches(2.5));
    const start = { x: inches(5.5), y: inches(2.5), score: bad };
    const { best, isStopped } = narrowDown(field, start, { cells: 0 }, 100_000);
    assert.equal(isStopped, false);
    assert.ok(compareScores(best.score, bad) < 0);
    assert.deepEqual(best.score, laidScore(one, SIXTEENTH, best.x, best.y));
    assert.equal(narrowDown(field, best, { cells: 0 }, 100_000).best, best);
  });

  it("keeps the better of what it found when it is stopped, and says so", () => {
    const one = oneWall({
      face: [inches(5.875), inches(2.875)],
      size: [inches(31), inches(20.5)],
      holes: [[inches(12.3), inches(9.1), inches(4.5)]],
    });
    const field = fieldOf(one.plan, one.wall, one.lay, SIXTEENTH);
    const bad = laidScore(one, SIXTEENTH, inches(5.5), inches(2.5));
    const start = { x: inches(5.5), y: inches(2.5), score: bad };
    const effort = { cells: 0 };
    const { best, isStopped } = narrowDown(field, start, effort, 3_000);
    assert.equal(isStopped, true);
    assert.ok(compareScores(best.score, bad) <= 0);
    assert.ok(effort.cells < 6_000, `${effort.cells} looks`);
  });
});
