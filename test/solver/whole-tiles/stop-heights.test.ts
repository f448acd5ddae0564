import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { stopHeights } from "../../../src/solver/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";
import { nichePlan } from "./niche-plan.js";

const INCH = NM_PER.inch;

function stops(top: string, height = "61 1/8") {
  const text = nichePlan("").replace("top ceiling joint 0", top).replace("61 1/8", height);
  const { wall, laid } = firstWall(solveClean(text));
  return stopHeights(wall, laid);
}

describe("stopHeights", () => {
  it("ends on a whole course where the wall does", () => {
    // Ten courses: 10 x 6 + 9 x 1/8.
    assert.deepEqual(stops("top ceiling joint 0"), {
      isWhole: true,
      below: 61.125 * INCH,
      above: 67.25 * INCH,
    });
  });

  it("is one course lower or higher where the last one is cut", () => {
    assert.deepEqual(stops("top ceiling joint 0", "60"), {
      isWhole: false,
      below: 55 * INCH,
      above: 61.125 * INCH,
    });
  });

  it("adds the top's joint, or its trim and a joint", () => {
    assert.equal(stops("top ceiling movement 1/4", "60")!.above, 61.375 * INCH);
    assert.equal(stops("top free trim nose", "60")!.above, 62.25 * INCH);
  });

  it("has none below a wall lower than a course", () => {
    assert.deepEqual(stops("top ceiling joint 0", "5"), {
      isWhole: false,
      below: null,
      above: 6 * INCH,
    });
  });

  it("says nothing of a top that is measured", () => {
    assert.equal(stops("top ceiling measured 0: 0, 60: 1/2 joint 0"), null);
  });
});
