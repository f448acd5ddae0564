import assert from "node:assert/strict";
import { coursesBefore, isMain } from "../../../src/drawing/scene/main-lay.js";
import { PANEL, STACKED } from "../../language/resolve/lays-text.js";
import { solveClean } from "../../support/solve-text.js";

describe("the lays of a wall in its picture", () => {
  it("count their courses on where one stands on the other", () => {
    const wall = solveClean(STACKED).solved.walls[0]!;
    assert.deepEqual(
      wall.lays.map((lay) => [isMain(lay), coursesBefore(wall, lay)]),
      [
        [true, 0],
        [true, 2],
        [true, 3],
      ],
    );
  });

  it("count a panel's by themselves, after the wall's", () => {
    const wall = solveClean(PANEL).solved.walls[0]!;
    const [field, panel] = wall.lays;
    assert.deepEqual([isMain(field!), isMain(panel!)], [true, false]);
    assert.equal(coursesBefore(wall, panel!), field!.courses.length);
  });
});
