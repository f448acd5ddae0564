import assert from "node:assert/strict";
import { allCuts } from "../../../src/takeoff/index.js";
import { nicheText } from "../../solver/insides/niche-text.js";
import { takeText } from "../../support/takeoff-text.js";

describe("the cuts of a wall and of the insides of its openings", () => {
  const { taken } = takeText(nicheText());
  const cuts = allCuts(taken.walls);

  it("are listed wall by wall, each before its insides", () => {
    assert.deepEqual(
      cuts.map(({ wall, pieces }) => [wall, pieces.length]),
      // By hand: the wall is 1210 wide, five tiles and 202 of the sixth, so that it ends in 198 less... of each
      // of its ten courses; the insides are those of the niche by hand.
      [
        ["back", cuts[0]!.pieces.length],
        ["back.shelf.back", 6],
        ["back.shelf.left", 3],
        ["back.shelf.right", 3],
        ["back.shelf.sill", 2],
        ["back.shelf.head", 2],
      ],
    );
  });

  it("have labels of their own, from the names alone", () => {
    assert.equal(cuts[4]!.pieces[1]!.label, "B.shelf.sill-01-02");
  });

  it("come from the same tiles as the wall's", () => {
    const [field] = taken.tiles;
    const pieces = field!.cut.flatMap((tile) => tile.pieces.map(({ label }) => label));
    const labels = cuts.flatMap((each) => each.pieces.map(({ label }) => label));
    assert.deepEqual([...pieces].sort(), [...labels].sort());
  });

  it("keep the edge that shows at the front as the factory made it", () => {
    for (const { factory } of cuts[2]!.pieces) assert.ok(factory.includes("left"));
    for (const { factory } of cuts[3]!.pieces) assert.ok(factory.includes("right"));
    for (const { factory } of cuts[4]!.pieces) assert.ok(factory.includes("bottom"));
    for (const { factory } of cuts[5]!.pieces) assert.ok(factory.includes("top"));
  });
});
