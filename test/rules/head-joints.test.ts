import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { headJointsOf } from "../../src/rules/head-joints.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText, type WallText } from "./wall-text.js";

const joints = (parts: WallText, course: number) =>
  headJointsOf(firstWall(solveClean(wallText(parts))).laid, course).map(
    ({ box }) => (box.left + box.right) / 2 / NM_PER.inch,
  );

describe("the head joints of a course", () => {
  it("stand between its pieces, by their bond", () => {
    assert.deepEqual(joints({}, 0), [6.0625, 12.1875, 18.3125]);
    assert.deepEqual(joints({ bond: "running 1/2" }, 1), [3, 9.125, 15.25, 21.375]);
  });

  it("do not stand at an opening", () => {
    const wall = "window sash {\n at 7, 0\n size 6 x 8\n movement 1/8\n}";
    assert.deepEqual(joints({ wall }, 0), [6.0625, 18.3125]);
  });
});
