import assert from "node:assert/strict";
import { exactLength } from "../../../src/measure/index.js";
import { holeFits, type Place } from "../../../src/solver/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";
import { nichePlan } from "./niche-plan.js";

function fits(holes: string, bond = "stack") {
  const { wall, laid } = firstWall(solveClean(nichePlan(holes, undefined, bond)));
  const { tile, joint } = holeFits(laid, wall.wall.holes[0]!);
  return { tile: words(tile), joint: words(joint) };
}

const words = (place: Place | null): string | null =>
  place && `${exactLength(place.x, "inch")}, ${exactLength(place.y, "inch")}`;

describe("holeFits", () => {
  it("gives the middle of the nearest tile, and of the nearest joint", () => {
    // The tile from 12 1/8, 6 1/8; the bed joint over it.
    assert.deepEqual(fits("hole tap at 17, 11 across 1"), {
      tile: "18 1/8, 9 1/8",
      joint: "18 1/8, 12 3/16",
    });
  });

  it("gives the head joint where that is nearer", () => {
    assert.equal(fits("hole tap at 14, 9 across 1").joint, "12 1/16, 9 1/8");
  });

  it("follows the bond", () => {
    assert.equal(fits("hole tap at 14, 9 across 1", "running 1/2").tile, "12 1/16, 9 1/8");
  });

  it("passes over tiles that something else cuts", () => {
    const blocked = "hole tap at 17, 10 across 1\n hole arm at 22, 9 across 1";
    assert.equal(fits(blocked).tile, "18 1/8, 15 1/4");
  });

  it("has none where no whole tile is near", () => {
    const niche = "niche n {\n at 1, 1\n size 70 x 26\n}\n niche m {\n at 1, 29\n size 70 x 31\n}";
    assert.deepEqual(fits(`hole tap at 30, 28 across 1/2\n ${niche}`), { tile: null, joint: null });
  });
});
