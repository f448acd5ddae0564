import assert from "node:assert/strict";
import { Figures } from "../../src/service/figures.js";
import { setFigures } from "../../src/service/hover-set.js";
import { wallPlan } from "./plans.js";
import { stateOf } from "./state-of.js";

/** Courses of 2 7/8 with joints of 1/16 from the pan's joint of 1/8: course 6 is planned to end at 17 11/16. */
function told(statement: string): string[] {
  const lay = `    joint 1/16\n    across joint centred on wall\n    up full course from bottom\n    ${statement}\n`;
  const [wall] = stateOf(wallPlan(lay)).outcome.solved.walls;
  return wall!.lays.flatMap((each) => setFigures(each, new Figures("inch")));
}

describe("what is set of a lay, in figures", () => {
  it("is nothing where nothing is set", () => {
    assert.deepEqual(told(""), []);
  });

  it("is its courses, and their top as planned where none was measured", () => {
    assert.deepEqual(told("set courses 1 to 6"), [
      "courses 1 to 6 are set, the top as planned, at 17 11/16 in",
    ]);
  });

  it("is where the top was measured, the height that the rest begins over, and what that made of the bed joints", () => {
    assert.deepEqual(told("set courses 1 to 6 top 18 at left, 17 3/4 at right"), [
      "courses 1 to 6 are set, the top measured at 18 in (0 in from the left), 17 3/4 in (60 in from the left)",
      "the rest begins over 18 in, 5/16 in over where it was planned; bed joints 1/8 in",
    ]);
    assert.deepEqual(told("set courses 1 to 1 top 2 15/16"), [
      "course 1 is set, the top measured at 2 15/16 in",
      "the rest begins over 2 15/16 in, 1/16 in under where it was planned",
    ]);
  });

  it("says where a measured top is left out", () => {
    assert.deepEqual(told("set courses 1 to 6 top 30"), [
      "courses 1 to 6 are set, the top measured at 30 in: left out, it can't be there",
    ]);
  });
});
