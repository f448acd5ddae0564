import assert from "node:assert/strict";
import type { WallScene } from "../../src/drawing/index.js";
import {
  indexPieces,
  isInside,
  pieceAt,
  pieceRings,
  placeInside,
} from "../../src/preview/piece-index.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { planPicture } from "./support/plan-picture.js";

/** A U, open at its top; y runs down. */
const U = [0, 0, 90, 0, 90, -60, 60, -60, 60, -20, 30, -20, 30, -60, 0, -60];

describe("pieces found by place", () => {
  it("finds a rectangle inside its bounds and nothing in the joint", () => {
    const index = indexPieces(wallOf([{ course: 1, boxes: [0, -10, 20, 0, 21, -10, 40, 0] }]));
    assert.equal(pieceAt(index, { x: 5, y: -5 }), 0);
    assert.equal(pieceAt(index, { x: 30, y: -5 }), 1);
    assert.equal(pieceAt(index, { x: 20.5, y: -5 }), -1);
    assert.deepEqual(pieceRings(index, 1), [[21, 0, 40, 0, 40, -10, 21, -10]]);
  });

  it("finds nothing in the mouth of a U or in a hole", () => {
    const hole = [5, -10, 10, -10, 10, -5, 5, -5];
    const index = indexPieces(wallOf([{ course: 1, boxes: [], shapes: [[U, hole]] }]));
    assert.equal(pieceAt(index, { x: 15, y: -40 }), 0);
    assert.equal(pieceAt(index, { x: 45, y: -40 }), -1);
    assert.equal(pieceAt(index, { x: 7, y: -7 }), -1);
  });

  it("finds nothing on a wall without pieces", () => {
    assert.equal(pieceAt(indexPieces(wallOf([])), { x: 0, y: 0 }), -1);
  });

  it("puts pieces of all kinds in their courses, from left to right", () => {
    const index = indexPieces(
      wallOf([
        { course: 2, boxes: [0, -21, 20, -11] },
        { course: 1, boxes: [21, -10, 40, 0] },
        { course: 1, boxes: [0, -10, 20, 0] },
      ]),
    );
    assert.deepEqual([...index.course], [1, 1, 2]);
    assert.deepEqual([...index.courseStart], [0, 2, 3]);
    assert.deepEqual([...index.bounds.subarray(0, 4)], [0, -10, 20, 0]);
  });

  it("finds each piece of every example at a place inside it", () => {
    for (const name of exampleNames()) {
      const { scene } = planPicture(exampleText(name), exampleSource(name), 1, name);
      for (const wall of scene.walls) {
        const index = indexPieces(wall);
        for (let i = 0; i < index.count; i++) {
          const place = placeInside(index, i);
          assert.ok(isInside(pieceRings(index, i), place.x, place.y), `${name} ${wall.name} ${i}`);
          assert.equal(pieceAt(index, place), i, `${name} ${wall.name} ${i}`);
        }
      }
    }
  });
});

function wallOf(groups: readonly object[]): WallScene {
  return {
    pieces: groups.map((group) => ({ kind: "whole", shapes: [], ...group })),
  } as unknown as WallScene;
}
