import assert from "node:assert/strict";
import { isInside, surfacesOf } from "../../../src/solver/index.js";
import { solveClean } from "../../support/solve-text.js";
import { nicheText } from "./niche-text.js";

describe("all that is tiled", () => {
  const surfaces = surfacesOf(solveClean(nicheText()).solved.walls);

  it("is each wall, and after it what its openings have inside", () => {
    assert.deepEqual(
      surfaces.map(({ wall }) => wall.name),
      ["back", ...["back", "left", "right", "sill", "head"].map((face) => `back.shelf.${face}`)],
    );
  });

  it("tells insides from walls", () => {
    assert.deepEqual(surfaces.map(isInside), [false, true, true, true, true, true]);
  });
});
