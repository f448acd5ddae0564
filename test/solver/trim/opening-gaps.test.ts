import assert from "node:assert/strict";
import { openingGaps } from "../../../src/solver/trim/opening-gaps.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

const MM = 1e6;

/** The gaps in millimetres along a side, of a strip from and to so many millimetres across. */
function gaps(opening: string, side: "left" | "top", low: number, high: number) {
  const { wall } = firstWall(
    solveClean(`units mm
tile field { face 100 x 50
  thickness 8 }
trim edging { face 100 x 20
  thickness 8 }
wall back { size 600 x 500
  ${opening}
  lay field { bond stack
    joint 2
    across full tile from left
    up full course from bottom } }`),
  );
  const width = { low: low * MM, high: high * MM };
  return openingGaps(wall.region, side, width).map(({ left, right }) => [left / MM, right / MM]);
}

describe("openingGaps", () => {
  it("stops trim where an opening in its strip ends the tile: its soft joint off it", () => {
    const niche = "niche shelf { at 10, 100\n size 200 x 90\n movement 4 }";
    assert.deepEqual(gaps(niche, "left", 0, 20), [[96, 194]]);
    assert.deepEqual(gaps(niche, "top", 180, 200), [[6, 214]]);
  });

  it("stops none for an opening beside the strip, though its soft joint comes into it", () => {
    const niche = "niche shelf { at 18, 100\n size 200 x 90\n movement 4 }";
    assert.deepEqual(gaps(niche, "left", 0, 18), []);
  });

  it("stops it for a frame, one joint of the tile off that", () => {
    const framed = "window sash { at 30, 100\n size 200 x 90\n frame edging mitre\n movement 4 }";
    assert.deepEqual(gaps(framed, "left", 0, 20), [[78, 212]]);
  });

  it("stops it behind what stands on the floor, down past its joint", () => {
    const bench = "bench seat { at 0\n size 200 x 90\n movement 4 }";
    assert.deepEqual(gaps(bench, "left", 0, 20), [[-4, 94]]);
  });
});
