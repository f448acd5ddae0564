import assert from "node:assert/strict";
import { boxesOf, faceOf, insidesOf } from "./niche-text.js";

describe("how a surface inside an opening is laid", () => {
  it("is as the wall round it", () => {
    const { lay } = faceOf(insidesOf({ bond: "running 1/2" }), "back").lays[0]!;
    assert.equal(lay.tile.name, "field");
    assert.deepEqual(lay.bond, { kind: "running", p: 1, q: 2 });
    assert.equal(lay.joint.min, 2e6);
  });

  it("is stacked at the sides, for an edge of the factory's at the front of each course", () => {
    const insides = insidesOf({ bond: "running 1/2" });
    for (const face of ["left", "right"] as const) {
      assert.deepEqual(faceOf(insides, face).lays[0]!.lay.bond, { kind: "stack" });
    }
  });
});

describe("a surface that is laid otherwise than the wall", () => {
  const plan = "tile mosaic {\n face 48mm x 48mm\n thickness 6mm\n}";
  const insides = insidesOf({ plan, niche: "depth 90mm\n back mosaic stack joint 2mm" });

  it("starts in the middle, with a full course at the sill", () => {
    // 402 across less 2 at each end is 398: eight tiles and seven joints are 398, so that a joint in the middle
    // leaves whole tiles. Up from 2 the first course is whole.
    const boxes = boxesOf(faceOf(insides, "back"));
    assert.deepEqual(boxes.slice(0, 2), [
      [2, 2, 50, 50],
      [52, 2, 100, 50],
    ]);
    assert.equal(boxes.filter(([, bottom]) => bottom === 2).length, 8);
  });

  it("leaves the others as they are, but for its own thickness", () => {
    // The back's tile is 6 + 3 thick: the sides end at 101 - 9 - 2.
    assert.equal(boxesOf(faceOf(insides, "left"))[1]![2], 90);
  });
});
