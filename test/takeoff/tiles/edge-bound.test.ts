import assert from "node:assert/strict";
import { posesOf } from "../../../src/takeoff/tiles/demand.js";
import { edgeBound } from "../../../src/takeoff/tiles/edge-bound.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import type { Kind } from "../../../src/takeoff/tiles/kinds.js";

const FACE = { across: 100, up: 50, directional: true, kerf: 2 };

function corners(many: number, width: number, height: number, needs: number): Kind[] {
  const demand = { label: "", course: 1, width, height, needs };
  return [{ demand, count: many, poses: posesOf(demand, FACE) }];
}

describe("how many tiles it takes by their edges", () => {
  const leftBottom = EDGE.left | EDGE.bottom;

  it("is one for each piece that needs the same corner, where a tile isn't turned", () => {
    assert.equal(edgeBound(FACE, corners(5, 10, 10, leftBottom)), 5);
  });

  it("is one for four of them, where it may be", () => {
    const face = { ...FACE, directional: false };
    assert.equal(edgeBound(face, corners(5, 10, 10, leftBottom)), 2);
    assert.equal(edgeBound(face, corners(4, 10, 10, leftBottom)), 1);
  });

  it("is more where two are too long for one edge, whichever way they lie", () => {
    const face = { ...FACE, directional: false };
    assert.equal(edgeBound(face, corners(4, 60, 10, leftBottom)), 2);
    assert.equal(edgeBound(face, corners(4, 50, 10, leftBottom)), 1);
    assert.equal(edgeBound(face, corners(4, 60, 50, leftBottom | EDGE.top)), 4);
    const square = { ...face, up: 100 };
    assert.equal(edgeBound(square, corners(4, 60, 60, leftBottom)), 2);
  });

  it("is one for each whole edge, and for two ends that share one", () => {
    const rip = corners(2, 100, 20, EDGE.left | EDGE.right | EDGE.bottom);
    const left = corners(1, 49, 20, leftBottom);
    const right = corners(1, 49, 20, EDGE.right | EDGE.bottom);
    assert.equal(edgeBound(FACE, [...rip, ...left, ...right]), 3);
    assert.equal(edgeBound({ ...FACE, kerf: 3 }, [...rip, ...left, ...right]), 4);
  });

  it("is nothing for pieces that need no corner", () => {
    assert.equal(edgeBound(FACE, corners(9, 60, 40, EDGE.bottom)), 0);
  });
});
