import assert from "node:assert/strict";
import { boundsOf } from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { randomOutline } from "../../support/random-outline.js";
import { firstWall } from "../../support/solve-text.js";
import { outlinedWall } from "./outlined-wall.js";

const runsOf = (outline: string, ...sides: readonly string[]) =>
  firstWall(outlinedWall(outline, ...sides)).wall.trims;

/** 600 wide; its top falls 3 in 4 from 600 to 300 at 400, where it steps up to a level of 500. */
const RISER = "0, 0 to 600, 0 to 600, 500 to 400, 500 to 400, 300 to 0, 600";
const LEFT_OUT = "right wall movement 3";

/** A run's bounds in whole millimetres, with its slanted ends. */
const toldOf = (runs: ReturnType<typeof runsOf>): string[] =>
  runs.flatMap(({ side, pieces }) =>
    pieces.map(({ shape, mitre }) => {
      const { left, bottom, right, top } = boundsOf(shape.outline);
      const box = [left, bottom, right, top].map((nm) => Math.round(nm / 1e6)).join(" ");
      return `${side} ${box} ${mitre.join("+")}`.trim();
    }),
  );

describe("trim along a riser at which a slope ends", () => {
  it("goes through from the outer edge at its foot, and is cut along the slope over it", () => {
    const runs = runsOf(RISER, "left free trim edging", LEFT_OUT, "top free trim edging");
    assert.deepEqual(toldOf(runs), [
      "left 0 3 20 600 top",
      // The slope's, 20 square to it, which is 25 high, ends plumb a joint of 2 before the riser's.
      "top 22 277 398 584 left+right",
      // The level's begins with the tile, a joint past the riser's.
      "top 422 480 597 500",
      // Tile ends 22 square to the slope under it, 27.5 down: at 420 under 285, where it goes on behind the riser.
      // The riser's trim stops a joint of 2 over that, 2.5 up; over it, it goes through to the wall's top.
      "left 400 260 420 500 bottom",
    ]);
  });

  it("is none where the riser meets something: the slope's stops a joint off the tile beside it", () => {
    const runs = runsOf(RISER, "left wall movement 3", LEFT_OUT, "top free trim edging");
    assert.deepEqual(toldOf(runs), ["top 3 274 401 598 left+right", "top 403 480 597 500"]);
  });

  it("stands on a step at its foot", () => {
    const bottom =
      "0, 0 to 200, 100 to 200, 60 to 300, 60 to 300, 20 to 600, 20 to 600, 500 to 0, 500";
    const runs = runsOf(bottom, "left free trim edging", LEFT_OUT, "top ceiling movement 3");
    assert.deepEqual(toldOf(runs).at(-1), "left 200 63 220 111 top");
  });
});

describe("trim along random risers", () => {
  it("never lies on tile or on other trim", () => {
    let runs = 0;
    // The last ones had trim over trim, or over tile, once.
    const seeds = [...Array(60).keys(), 74, 96, 128, 221, 329, 367, 380, 708];
    for (const seed of seeds) {
      const random = randomFrom(seed);
      const corners = randomOutline(random, "risers").map(({ x, y }) => `${x}, ${y}`);
      const kinds = ["free trim edging", "free", "wall movement 3"];
      const sides = ["left", "right", "top"].map((side) => `${side} ${random.pick(kinds)}`);
      runs += runsOf(corners.join(" to "), ...sides).length;
    }
    assert.ok(runs > 60, `${runs}`);
  });
});
