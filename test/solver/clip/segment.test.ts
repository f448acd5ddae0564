import assert from "node:assert/strict";
import { areClear, crossingOf, segmentsOf, sideOf } from "../../../src/solver/clip/segment.js";

const segment = (ax: number, ay: number, bx: number, by: number) => ({ ax, ay, bx, by });

describe("the edges of a ring", () => {
  it("go from each corner to the next, and from the last to the first", () => {
    assert.deepEqual(segmentsOf([0, 0, 9, 0, 9, 9]), [
      segment(0, 0, 9, 0),
      segment(9, 0, 9, 9),
      segment(9, 9, 0, 0),
    ]);
  });

  it("are clear of each other where the boxes round them don't even touch", () => {
    const edge = segment(10, 0, 0, 10);
    assert.ok(areClear(edge, segment(11, 0, 20, 10)));
    assert.ok(areClear(edge, segment(0, 11, 10, 20)));
    assert.ok(!areClear(edge, segment(10, 10, 20, 20)));
    assert.ok(!areClear(edge, segment(10, 9, 9, 10)));
  });

  it("have places on their left, on their right and on their line", () => {
    const edge = segment(0, 0, 10, 10);
    assert.deepEqual([sideOf(edge, 0, 1), sideOf(edge, 1, 0), sideOf(edge, 20, 20)], [1, -1, 0]);
  });

  it("cross at a place that is rounded once, and kept exactly along an upright or a level one", () => {
    const sloped = segment(-9, 2, 18, 3);
    assert.deepEqual(crossingOf(sloped, segment(9, 0, 9, 9)), { x: 9, y: 3 });
    assert.deepEqual(crossingOf(segment(0, 0, 9, 2), segment(0, 1, 9, 1)), { x: 5, y: 1 });
  });
});
