import assert from "node:assert/strict";
import { allToCut, cutsOf, surfaceToCut } from "../../../src/takeoff/cuts/surface-to-cut.js";
import { nicheText } from "../../solver/insides/niche-text.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

describe("the pieces to cut of a wall and of the insides of its openings", () => {
  const answer = solveClean(nicheText());
  const surface = surfaceToCut(firstWall(answer).wall, "B");

  it("are the wall's, then each surface's", () => {
    const all = allToCut(surface);
    assert.equal(all.length, 6);
    assert.equal(all[0], surface.toCut);
    assert.deepEqual(
      all.slice(1).map((pieces) => pieces.length),
      [6, 3, 3, 2, 2],
    );
  });

  it("keep their labels in the cuts", () => {
    const cuts = cutsOf(answer.plan, surface);
    assert.deepEqual(
      cuts.insides.map(({ mark, pieces }) => [mark, pieces[0]!.label]),
      ["back", "left", "right", "sill", "head"].map((face) => [
        `B.shelf.${face}`,
        `B.shelf.${face}-01-01`,
      ]),
    );
  });
});
