import assert from "node:assert/strict";
import type { WallScene } from "../../src/drawing/index.js";
import { indexPieces } from "../../src/preview/piece-index.js";
import { walk } from "../../src/preview/piece-walk.js";

/** Course 1: pieces 0 1 2; course 2, half a tile on: 3 4. */
const index = indexPieces({
  pieces: [
    { kind: "whole", course: 1, boxes: [0, -1, 2, 0, 2, -1, 4, 0, 4, -1, 6, 0], shapes: [] },
    { kind: "whole", course: 2, boxes: [1, -2, 3, -1, 3, -2, 5, -1], shapes: [] },
  ],
} as unknown as WallScene);

describe("walking from piece to piece", () => {
  it("goes along a course and stops at its ends", () => {
    assert.equal(walk(index, 0, "right"), 1);
    assert.equal(walk(index, 2, "right"), 2);
    assert.equal(walk(index, 3, "left"), 3);
    assert.equal(walk(index, 1, "first"), 0);
    assert.equal(walk(index, 1, "last"), 2);
    assert.equal(walk(index, 3, "last"), 4);
  });

  it("goes up and down to the nearest piece and stops at the last course", () => {
    assert.equal(walk(index, 0, "up"), 3);
    assert.equal(walk(index, 2, "up"), 4);
    assert.equal(walk(index, 4, "down"), 1);
    assert.equal(walk(index, 4, "up"), 4);
    assert.equal(walk(index, 0, "down"), 0);
  });

  it("begins at the first piece, and nowhere where there is none", () => {
    assert.equal(walk(index, -1, "up"), 0);
    const none = indexPieces({ pieces: [] } as unknown as WallScene);
    assert.equal(walk(none, 0, "up"), -1);
  });
});
