import assert from "node:assert/strict";
import { softPlaces } from "../../src/sheets/soft-places.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { WALL } from "./wall.js";

const placesOf = (text: string) => softPlaces(firstWall(solveClean(text)).wall, "inch");

describe("where soft joints are", () => {
  it("is nowhere in the tile where the plan states none", () => {
    assert.deepEqual(placesOf(WALL), []);
  });

  it("is told once for each", () => {
    const soft = WALL.replace(
      "bond running 1/2",
      "bond running 1/2\n movement joint over course 2",
    );
    assert.deepEqual(placesOf(soft), ["over course 2"]);
  });
});
