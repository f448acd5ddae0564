import assert from "node:assert/strict";
import type { PieceGroup, Scene } from "../../src/drawing/index.js";
import { simplifyScene } from "../../src/service/simplify-scene.js";

function simplified(group: PieceGroup): PieceGroup {
  const scene = { walls: [{ pieces: [group] }] } as unknown as Scene;
  return simplifyScene(scene).walls[0]!.pieces[0]!;
}

describe("a simplified scene", () => {
  it("joins whole tiles of a course into runs, and not over an opening", () => {
    const boxes = [0, 0, 5, 2, 6, 0, 11, 2, 30, 0, 35, 2];
    const { boxes: joined } = simplified({ kind: "whole", course: 1, boxes, shapes: [] });
    assert.deepEqual(joined, [0, 0, 11, 2, 30, 0, 35, 2]);
  });

  it("leaves cut pieces as they are", () => {
    const group: PieceGroup = {
      kind: "cut",
      course: 1,
      boxes: [0, 0, 5, 2, 6, 0, 8, 2],
      shapes: [],
    };
    assert.equal(simplified(group), group);
  });
});
