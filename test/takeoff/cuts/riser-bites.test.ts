import assert from "node:assert/strict";
import { riserBites } from "../../../src/takeoff/cuts/riser-bites.js";

const piece = { left: 0, bottom: 0, right: 100, top: 50 };
const FAR = { at: [0], value: [1000] };
const LOW = { at: [0], value: [-1000] };

describe("what risers take out of a piece", () => {
  it("is a rectangle up to a level beside the riser, at the bottom and at the top", () => {
    const bottom = { at: [-100, 30, 30, 200], value: [20, 20, -5, -5] };
    assert.deepEqual(riserBites({ bottom, top: FAR }, piece), [
      { left: 0, bottom: 0, right: 30, top: 20 },
    ]);
    const top = { at: [-100, 30, 30, 200], value: [400, 400, 35, 35] };
    assert.deepEqual(riserBites({ bottom: LOW, top }, piece), [
      { left: 30, bottom: 35, right: 100, top: 50 },
    ]);
  });

  it("is as far as a slope leaves nothing of it: the rest is a taper", () => {
    const bottom = { at: [-100, 30, 30, 200], value: [7, 20, -5, -5] };
    // It rises 1 in 10: 17 at the piece's left end.
    assert.deepEqual(riserBites({ bottom, top: FAR }, piece), [
      { left: 0, bottom: 0, right: 30, top: 17 },
    ]);
  });

  it("is nothing where a riser is beside it, or what is behind it doesn't reach it", () => {
    const beside = { at: [-100, 0, 0, 200], value: [20, 20, -5, -5] };
    assert.deepEqual(riserBites({ bottom: beside, top: FAR }, piece), []);
    const under = { at: [-100, 30, 30, 200], value: [-2, -2, -5, -5] };
    assert.deepEqual(riserBites({ bottom: under, top: FAR }, piece), []);
  });
});
