import assert from "node:assert/strict";
import { faceOf, insidesOf } from "./niche-text.js";

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
