import assert from "node:assert/strict";
import { check } from "../../src/rules/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { heightsOf, inches, widthsOf } from "../support/layout.js";

// Published: 60 x 72 in with an 8 in tile has 6 in at each side and 4 in at each end
// (mathforum.org/library/drmath/view/56485.html, no joints). With J = 1/8 in they are 5-9/16 and
// 3-7/16 in (derived), so that the ends go under half a tile.
describe("60 x 72 in with an 8 in tile (mathforum.org/library/drmath/view/56485.html)", () => {
  const solved = (joint: string) =>
    solveClean(
      freeWall({
        face: "8 x 8",
        size: "60 x 72",
        joint,
        across: "joint centred on wall",
        up: "joint at 36",
      }),
    );
  const underHalf = (joint: string) =>
    check(solved(joint).solved).filter(({ code }) => code === "cut/under-half").length;

  it("without joints has 6 in at each side and 4 in at each end, as published", () => {
    const { laid } = firstWall(solved("0"));
    assert.deepEqual(widthsOf(laid), [6, 8, 8, 8, 8, 8, 8, 6].map(inches));
    assert.deepEqual(heightsOf(laid), [4, 8, 8, 8, 8, 8, 8, 8, 8, 4].map(inches));
  });

  it("with joints of 1/8 in has 5-9/16 in and 3-7/16 in (derived)", () => {
    const { laid } = firstWall(solved("1/8"));
    assert.deepEqual(widthsOf(laid), [5.5625, 8, 8, 8, 8, 8, 8, 5.5625].map(inches));
    assert.deepEqual(heightsOf(laid), [3.4375, 8, 8, 8, 8, 8, 8, 8, 8, 3.4375].map(inches));
  });

  it("is told as under half with the joints and not without", () => {
    assert.equal(underHalf("0"), 0);
    assert.ok(underHalf("1/8") > 0);
  });
});
