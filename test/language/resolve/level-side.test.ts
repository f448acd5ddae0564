import assert from "node:assert/strict";
import { levelSide } from "../../../src/language/resolve/level-side.js";

const corners = (...pairs: (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));
const REACH = { from: 0, to: 60 };

describe("a bottom or a top", () => {
  it("that only slopes is its own line", () => {
    const line = corners([0, 40], [30, 80], [60, 80]);
    assert.deepEqual(levelSide(line, "top", REACH), { line, steps: [] });
  });

  it("that steps is level at its outermost, with a step over each other level", () => {
    // A half wall: 40 high up to 20, then 90.
    const side = levelSide(corners([0, 40], [20, 40], [20, 90], [60, 90]), "top", REACH);
    assert.ok("line" in side);
    assert.deepEqual(side.line, corners([0, 90]));
    const [step, ...more] = side.steps;
    assert.deepEqual([step!.right, step!.bottom, more.length], [20, 40, 0]);
    assert.ok(step!.left < 0 && step!.top > 90);
    // Its tile stands under the step, and right of it: that edge of the wall faces left.
    assert.deepEqual(step!.meets, { left: null, right: "left", bottom: "top", top: null });
  });

  it("of a bottom is the same turned over", () => {
    const side = levelSide(corners([0, -4], [6, -4], [6, 0], [60, 0]), "bottom", REACH);
    assert.ok("line" in side);
    const [step] = side.steps;
    assert.deepEqual([step!.left, step!.top], [6, 0]);
    assert.deepEqual(step!.meets, { left: "right", right: null, bottom: null, top: "bottom" });
  });

  it("may step from a level up to a slope, but not from a slope up to a level", () => {
    const up = levelSide(corners([0, 40], [20, 40], [20, 60], [60, 90]), "top", REACH);
    assert.ok("line" in up && up.steps.length === 1);
    assert.deepEqual(levelSide(corners([0, 40], [20, 60], [20, 90], [60, 90]), "top", REACH), {
      x: 20,
      y: 60,
    });
  });
});
