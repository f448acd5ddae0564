import assert from "node:assert/strict";
import type { Side } from "../../../src/model/index.js";
import { boundsOf } from "../../../src/solver/index.js";
import { partsOf, pastEnds, type SlopedSide } from "../../../src/solver/trim/slope-parts.js";
import { firstWall } from "../../support/solve-text.js";
import { outlinedWall } from "./outlined-wall.js";

const MM = 1_000_000;
const TRIM = "free trim edging";

function sideOf(outline: string, side: Side, left = TRIM): SlopedSide {
  const text = [`left ${left}`, `right ${TRIM}`, `top ${TRIM}`];
  const { wall, region } = firstWall(outlinedWall(outline, ...text)).wall;
  return { wall, region, joint: 2 * MM, side, width: 20 * MM };
}

/** 600 wide; its top falls from 600 to 300 at 400, where it steps up to a level of 500. */
const RISER = "0, 0 to 600, 0 to 600, 500 to 400, 500 to 400, 300 to 0, 600";

describe("the parts of a sloping side's outer edge", () => {
  it("are its slopes and levels, and risers without a run; trim ends at the bare wall", () => {
    const parts = partsOf(sideOf(RISER, "top"));
    assert.deepEqual(
      parts.map(({ at, value, run, rise }) => [at, value, run, rise].map((nm) => nm / MM)),
      [
        [0, 600, 400, -300],
        [400, 300, 0, 200],
        [400, 500, 200, 0],
      ],
    );
  });

  it("end a joint off a riser's trim over it, and where tile does at its foot", () => {
    const box = { left: 0, bottom: 0, right: 600 * MM, top: 600 * MM };
    const ends = (left: string) => {
      const side = sideOf(RISER, "top", left);
      const [slope, riser, level] = partsOf(side);
      const [past] = pastEnds(side, [undefined, riser], box);
      const [before] = pastEnds(side, [riser, undefined], box);
      assert.ok(slope && level);
      return [boundsOf(past!).left / MM, boundsOf(before!).right / MM];
    };
    assert.deepEqual(ends(TRIM), [398, 422]);
    // A joint off the tile, which stands 3 off the riser.
    assert.deepEqual(ends("wall movement 3"), [401, 403]);
  });

  it("have nothing past an end where another slope goes on", () => {
    const side = sideOf("0, 0 to 600, 0 to 600, 300 to 300, 600 to 0, 300", "top");
    const [one, other] = partsOf(side);
    const box = { left: 0, bottom: 0, right: 600 * MM, top: 600 * MM };
    assert.deepEqual(pastEnds(side, [undefined, other], box), []);
    assert.deepEqual(pastEnds(side, [one, undefined], box), []);
  });
});
