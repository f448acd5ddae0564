import assert from "node:assert/strict";
import { softPlace } from "../../src/rules/index.js";
import { softJoints } from "../../src/solver/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText, type WallText } from "./wall-text.js";

const places = (parts: WallText) => {
  const { wall } = firstWall(solveClean(wallText({ size: "60 x 30", ...parts })));
  return softJoints(wall).runs.map(({ name }) => softPlace(name, "inch"));
};

describe("the words of a soft joint in the tile", () => {
  it("tell the middle of an upright one, and the course under a level one", () => {
    assert.deepEqual(places({ lay: "movement joint over course 3\nmovement joint at 30" }), [
      "over course 3",
      "at 30 9/16 in",
    ]);
  });

  it("count courses as the wall's pieces are counted", () => {
    const plan = "tile liner {\n face 6 x 3\n thickness 5/16\n}";
    const wall =
      "lay liner {\n bond stack\n joint 1/8\n over field\n movement joint over course 2\n}";
    assert.deepEqual(places({ plan, lay: "covers bottom to 12 3/8", wall }), ["over course 6"]);
  });

  it("tell the lays that one lies between", () => {
    const plan = "tile liner {\n face 6 x 3\n thickness 5/16\n}";
    const wall = "lay liner {\n bond stack\n joint 1/8\n}";
    const lay = "covers bottom to 12 3/8\nbetween movement 1/4";
    assert.deepEqual(places({ plan, lay, wall }), ["between field and liner"]);
  });
});
