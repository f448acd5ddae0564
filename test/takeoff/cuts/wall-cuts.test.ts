import assert from "node:assert/strict";
import { wallCuts } from "../../../src/takeoff/cuts/wall-cuts.js";
import { cutWall } from "../../support/cut-wall.js";

describe("the cuts of a wall", () => {
  const { plan, wall, laid } = cutWall({ size: "254 x 130" });
  const cuts = wallCuts(plan, wall, "M");

  it("list every cut piece, course by course, and no whole tile", () => {
    assert.deepEqual(
      cuts.pieces.map(({ label }) => label),
      ["M-01-03", "M-02-03", "M-03-01", "M-03-02", "M-03-03"],
    );
    assert.equal(laid.pieces.count, 9);
  });

  it("name the piece of the solved plan that each is", () => {
    const last = cuts.pieces.at(-1)!;
    assert.deepEqual([last.id, last.index, last.course], ["back/3/3", 8, 3]);
    assert.equal(last.tile, laid.lay.tile);
  });

  it("bear the wall's name and mark", () => {
    assert.deepEqual([cuts.wall, cuts.mark], ["back", "M"]);
  });
});
