import assert from "node:assert/strict";
import { Figures } from "../../src/service/figures.js";
import { hoverSoft } from "../../src/service/hover-soft.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText } from "../rules/wall-text.js";

const told = (lay: string, wall = "") => {
  const { wall: solved } = firstWall(solveClean(wallText({ size: "60 x 30", lay, wall })));
  return hoverSoft(solved, () => true, new Figures("inch"));
};

describe("the hover of a soft joint in the tile", () => {
  it("is nothing where there is none", () => {
    assert.equal(told(""), null);
  });

  it("tells its place, its width and its length without what an opening takes", () => {
    const niche = "niche shelf {\n at 20, 6\n size 20 x 12\n movement 1/8\n}";
    assert.equal(
      told("movement joint at 30", niche),
      "**soft joint at 30 9/16 in**\n\n1/8 in wide, 17 3/4 in long",
    );
  });
});
