import assert from "node:assert/strict";
import { wallHeadline } from "../../src/compare/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

/** What is told of each wall, in the order of the plan after. */
function headlines(before: string, after: string): (string | null)[] {
  const comparison = comparisonOf(before, after);
  return comparison.walls.map((wall) => wallHeadline(wall, comparison));
}

const SIDE = WALL.slice(WALL.indexOf("wall back")).replace('back "Back', 'side "Side');

describe("wallHeadline", () => {
  it("counts the cuts that changed, and slivers by their name", () => {
    const narrower = edited(WALL, ["size 41 3/8 x", "size 37 7/8 x"]);
    assert.deepEqual(headlines(WALL, narrower), ["6 cuts changed, 6 slivers new"]);
    assert.deepEqual(headlines(narrower, WALL), ["6 cuts changed, 6 slivers gone"]);
  });

  it("tells of pieces that only moved where no cut changed", () => {
    const slid = edited(
      WALL,
      ["size 41 3/8 x", "size 41 1/2 x"],
      ["left wall movement 1/8", "left wall movement 1/4"],
      ["at 16 5/8,", "at 16 3/4,"],
    );
    assert.match(headlines(WALL, slid)[0]!, /^\d+ pieces moved/);
  });

  it("is nothing for a wall on which nothing changed", () => {
    const two = `${WALL}${SIDE}`;
    const [back, side] = headlines(two, edited(two, ["at 16 5/8, 8 3/8", "at 16 1/2, 8 3/8"]));
    assert.notEqual(back, null);
    assert.equal(side, null);
  });

  it("says that a wall is new, gone or laid anew", () => {
    assert.deepEqual(headlines("units inch", WALL), ["new wall"]);
    assert.match(headlines(WALL, "units inch")[0]!, /^gone/);
    assert.match(headlines(WALL, edited(WALL, ["face 4 x 4", "face 8 x 8"]))[0]!, /^laid anew/);
  });

  it("says so where only words changed", () => {
    const renamed = edited(WALL, ["wall back", "wall rear"]);
    assert.deepEqual(headlines(WALL, renamed), ["changed, no cut among it"]);
  });

  it("leaves findings that are allowed out", () => {
    const narrower = edited(WALL, ["size 41 3/8 x", "size 37 7/8 x"]);
    const allowed = edited(narrower, [
      "  lay field {",
      '  allow cut/sliver "behind the tap"\n  lay field {',
    ]);
    assert.doesNotMatch(headlines(WALL, allowed)[0]!, /sliver/);
  });
});
