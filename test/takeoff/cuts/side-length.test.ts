import assert from "node:assert/strict";
import { lengthAlong } from "../../../src/takeoff/cuts/side-length.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("how much of a piece lies along a side", () => {
  it("is its whole edge there, and nothing of one that doesn't reach it", () => {
    const { laid, piece } = cutWall({ size: "254 x 130" });
    const { index } = piece("B-03-03");
    // Course 3 has 130 - 2 x 52 = 26 mm; its last piece 254 - 2 x 102 = 50 mm.
    assert.equal(lengthAlong(laid, index, "right"), mm(26));
    assert.equal(lengthAlong(laid, index, "top"), mm(50));

    assert.equal(lengthAlong(laid, piece("B-03-01").index, "left"), mm(26));
    assert.equal(lengthAlong(laid, piece("B-03-01").index, "right"), 0);
    assert.equal(lengthAlong(laid, index, "bottom"), 0);
  });

  it("is the slope where the side is out of plumb, on both sides of a reading", () => {
    const { laid, piece } = cutWall({
      size: "254 x 50",
      wall: ["right wall measured 0: 0, 30: -40, 50: -40 movement 0"],
    });
    // 30 up and 40 across are 50 along; then 20 upright.
    assert.equal(lengthAlong(laid, piece("B-01-03").index, "right"), mm(50 + 20));
  });

  it("leaves out what an opening at the side takes", () => {
    const { laid, piece } = cutWall({
      size: "254 x 50",
      wall: ["niche shelf {\nat 234, 20\nsize 20 x 10\nmovement 0\n}"],
    });
    assert.equal(lengthAlong(laid, piece("B-01-03").index, "right"), mm(40));
  });
});
