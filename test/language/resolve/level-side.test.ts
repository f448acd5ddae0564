import assert from "node:assert/strict";
import { levelSide } from "../../../src/language/resolve/level-side.js";

const corners = (...pairs: (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));
const REACH = { from: 0, to: 60 };

describe("a bottom or a top", () => {
  it("that only slopes is its own line", () => {
    const line = corners([0, 40], [30, 80], [60, 80]);
    assert.deepEqual(levelSide(line, "top", REACH), { line, steps: [], risers: [] });
  });

  it("that steps is level at its outermost, with a step over each other level", () => {
    // A half wall: 40 high up to 20, then 90.
    const side = levelSide(corners([0, 40], [20, 40], [20, 90], [60, 90]), "top", REACH);
    assert.deepEqual(side.line, corners([0, 90], [60, 90]));
    const [step, ...more] = side.steps;
    assert.deepEqual([step!.right, step!.bottom, more.length], [20, 40, 0]);
    assert.ok(step!.left < 0 && step!.top > 90);
    // Its tile stands under the step, and right of it: that edge of the wall faces left.
    assert.deepEqual(step!.meets, { left: null, right: "left", bottom: "top", top: null });
  });

  it("of a bottom is the same turned over", () => {
    const side = levelSide(corners([0, -4], [6, -4], [6, 0], [60, 0]), "bottom", REACH);
    const [step] = side.steps;
    assert.deepEqual([step!.left, step!.top], [6, 0]);
    assert.deepEqual(step!.meets, { left: "right", right: null, bottom: null, top: "bottom" });
  });

  it("has a riser where a slope ends at a step, whichever way that goes", () => {
    const up = levelSide(corners([0, 40], [20, 60], [20, 90], [60, 90]), "top", REACH);
    assert.deepEqual(up, {
      line: corners([0, 40], [20, 60], [20, 90], [60, 90]),
      steps: [],
      risers: [{ x: 20, low: 60, high: 90, solid: "left" }],
    });
    const down = levelSide(corners([0, 40], [20, 40], [20, 60], [60, 90]), "top", REACH);
    assert.deepEqual(down.risers, [{ x: 20, low: 40, high: 60, solid: "left" }]);
    assert.deepEqual(down.steps, []);
  });

  it("of a bottom has the solid under a slope left of a riser that faces left", () => {
    const { risers } = levelSide(corners([0, 0], [20, 9], [20, 2], [60, 8]), "bottom", REACH);
    assert.deepEqual(risers, [{ x: 20, low: 2, high: 9, solid: "left" }]);
    const [other] = levelSide(corners([0, 0], [20, 0], [20, 5], [60, 8]), "bottom", REACH).risers;
    assert.deepEqual(other, { x: 20, low: 0, high: 5, solid: "right" });
  });

  it("has no riser where a step beside the slope has it", () => {
    const side = levelSide(
      corners([0, 0], [20, 4], [20, 9], [30, 9], [30, 6], [60, 6]),
      "bottom",
      REACH,
    );
    assert.deepEqual(side.risers, []);
    assert.deepEqual(
      side.steps.map(({ left, right, top, meets }) => [left, right, top, meets.left, meets.right]),
      [[20, 30, 9, "right", "left"]],
    );
  });

  it("has a step where one level stands on another, beside a riser too, on a line as low as the lower one", () => {
    const path = corners([0, 0], [10, 30], [10, 20], [30, 20], [30, 4], [40, 4], [40, 5], [60, 8]);
    const { line, steps, risers } = levelSide(path, "bottom", REACH);
    assert.deepEqual(line, corners([0, 0], [10, 30], [10, 4], [40, 4], [40, 5], [60, 8]));
    assert.deepEqual(
      steps.map(({ left, right, top }) => [left, right, top]),
      [[10, 30, 20]],
    );
    assert.deepEqual(risers, [
      { x: 10, low: 20, high: 30, solid: "left" },
      { x: 40, low: 4, high: 5, solid: "right" },
    ]);
  });
});
