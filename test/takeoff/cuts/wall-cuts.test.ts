import assert from "node:assert/strict";
import { piecesToCut } from "../../../src/takeoff/cuts/pieces-to-cut.js";
import { wallCuts } from "../../../src/takeoff/cuts/wall-cuts.js";
import { cutWall } from "../../support/cut-wall.js";

describe("the cuts of a wall", () => {
  const { plan, wall, laid } = cutWall({ size: "254 x 130" });
  const cuts = wallCuts(plan, wall, "M", piecesToCut(wall, "M"));

  it("say of each piece which tile it is cut from, and how", () => {
    const kinds = cuts.pieces.map(({ label, cut }) => [label, cut.kind]);
    assert.deepEqual(kinds, [
      ["M-01-03", "crosscut"],
      ["M-02-03", "crosscut"],
      ["M-03-01", "rip"],
      ["M-03-02", "rip"],
      ["M-03-03", "corner"],
    ]);
    assert.ok(cuts.pieces.every(({ tile }) => tile === laid.lay.tile));
  });

  it("name the piece of the solved plan that each is of", () => {
    const last = cuts.pieces.at(-1)!;
    assert.deepEqual([last.id, last.index], ["back/3/3", 8]);
  });

  it("bear the wall's name and mark", () => {
    assert.deepEqual([cuts.wall, cuts.mark], ["back", "M"]);
  });
});
