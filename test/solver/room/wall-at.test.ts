import assert from "node:assert/strict";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { WallAt } from "../../../src/solver/room/wall-at.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

function wallAt(lay: string): WallAt {
  const plan = askedOf(`prefer {\n few cuts\n}\n${roomWall("back", SASH, lay)}`);
  const [wall] = plan.walls;
  const wanting = wantingOf(plan, plan.wishes);
  return new WallAt(wanting, wall!, wall!.lays[0]!, 0, { cells: 0 }, true, 1);
}

describe("a wall at one joint", () => {
  it("costs at every height at least what is known beforehand, and never less than the least of all", () => {
    const wall = wallAt("across full tile from left");
    assert.ok(wall.isOpen);
    assert.ok(wall.heights.length > 3);
    for (const y of wall.heights) {
      const best = wall.bestAt(y, null)!;
      assert.ok(compareCosts(wall.leastAt(y), best.cost) <= 0);
      assert.ok(compareCosts(wall.least, best.cost) <= 0);
    }
  });

  it("is laid no worse than a bar, or not at all", () => {
    const wall = wallAt("across full tile from left");
    const [y] = wall.heights;
    const best = wall.bestAt(y!, null)!;
    assert.equal(wall.bestAt(y!, best.cost), best);
    // One cut fewer than the best has.
    const bar = best.cost.map((number, i) => (i === 1 ? number - 1 : number));
    assert.equal(wall.bestAt(y!, bar), null);
  });

  it("has the one height that is stated", () => {
    const wall = wallAt("across full tile from left\n up full course from bottom");
    assert.deepEqual([wall.isOpen, wall.heights], [false, [0]]);
  });
});
