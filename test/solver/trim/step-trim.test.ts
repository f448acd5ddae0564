import assert from "node:assert/strict";
import { boundsOf } from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { firstWall } from "../../support/solve-text.js";
import { outlinedWall } from "./outlined-wall.js";

/** The trim of a wall with these lines: its side and its bounds in mm. */
const runsOf = (outline: string, ...sides: readonly string[]): string[] => {
  return firstWall(outlinedWall(outline, ...sides)).wall.trims.flatMap(({ side, pieces }) =>
    pieces.map(({ shape }) => {
      const { left, bottom, right, top } = boundsOf(shape.outline);
      return `${side} ${[left, bottom, right, top].map((nm) => nm / 1e6).join(" ")}`;
    }),
  );
};

/** 600 wide: 500 high up to 300, then 300 high. */
const HALF = "0, 0 to 600, 0 to 600, 300 to 300, 300 to 300, 500 to 0, 500";
const LEFT = "left wall movement 3";

describe("trim along steps", () => {
  it("runs on each tread and riser: uprights go through, level ones stand between", () => {
    const runs = runsOf(HALF, LEFT, "right free trim edging", "top free trim edging");
    assert.deepEqual(runs, [
      // The wall's own right end, up to the outer edge of the lower tread.
      "right 580 3 600 300",
      // The upper level: from the left wall's joint to the joint beside the riser's trim.
      "top 3 480 278 500",
      // The riser: from the joint over the tile at the inner corner up to the upper edge.
      "right 280 280 300 500",
      // The lower tread: from the joint beside the riser to the joint beside the right end's trim.
      "top 302 280 578 300",
    ]);
  });

  it("is on treads alone where the risers meet something", () => {
    const runs = runsOf(HALF, LEFT, "right wall movement 3", "top free trim edging");
    assert.deepEqual(runs, [
      "top 3 480 297 500",
      // Tile ends 3 mm before the riser; a joint of 2 off it the tread's trim begins.
      "top 299 280 597 300",
    ]);
  });

  it("is on risers alone where the treads meet something", () => {
    const runs = runsOf(HALF, LEFT, "right free trim edging", "top ceiling movement 4");
    assert.deepEqual(runs, ["right 580 3 600 296", "right 280 298 300 496"]);
  });

  it("goes round a post, and round a notch in the top", () => {
    const post =
      "0, 0 to 600, 0 to 600, 300 to 400, 300 to 400, 500 to 200, 500 to 200, 300 to 0, 300";
    const all = ["left free trim edging", "right free trim edging", "top free trim edging"];
    assert.deepEqual(runsOf(post, ...all).sort(), [
      "left 0 3 20 300",
      "left 200 280 220 500",
      "right 380 280 400 500",
      "right 580 3 600 300",
      "top 22 280 198 300",
      "top 222 480 378 500",
      "top 402 280 578 300",
    ]);
    const notch =
      "0, 0 to 600, 0 to 600, 500 to 400, 500 to 400, 300 to 200, 300 to 200, 500 to 0, 500";
    assert.deepEqual(runsOf(notch, ...all).sort(), [
      "left 0 3 20 500",
      "left 400 280 420 500",
      "right 180 280 200 500",
      "right 580 3 600 500",
      "top 202 280 398 300",
      "top 22 480 178 500",
      "top 422 480 578 500",
    ]);
  });

  it("goes down a stair of steps", () => {
    const stair =
      "0, 0 to 600, 0 to 600, 200 to 400, 200 to 400, 350 to 200, 350 to 200, 500 to 0, 500";
    const runs = runsOf(stair, LEFT, "right free trim edging", "top free trim edging");
    assert.deepEqual(runs.sort(), [
      "right 180 330 200 500",
      "right 380 180 400 350",
      "right 580 3 600 200",
      "top 202 330 378 350",
      "top 3 480 178 500",
      "top 402 180 578 200",
    ]);
  });

  it("is along a bottom that steps, too", () => {
    const text = "0, 100 to 300, 100 to 300, 0 to 600, 0 to 600, 500 to 0, 500";
    const runs = runsOf(
      text,
      "left free trim edging",
      "right wall movement 3",
      "top ceiling movement 3",
    );
    // The riser under the left part faces left; the bottom meets the floor.
    assert.deepEqual(runs.sort(), ["left 0 103 20 497", "left 300 3 320 101"]);
  });

  it("goes on along a slope between them", () => {
    const text = "0, 0 to 600, 0 to 600, 300 to 400, 300 to 400, 400 to 300, 500 to 0, 500";
    const runs = runsOf(text, LEFT, "right wall movement 3", "top free trim edging");
    // Mitred where it bends, half a joint off on either side; plumb at the riser, which meets a wall 3 mm off.
    assert.deepEqual(
      runs.map((run) =>
        run
          .split(" ")
          .map((word) => word.split(".")[0])
          .join(" "),
      ),
      ["top 3 480 298 500", "top 292 374 397 499", "top 399 280 597 300"],
    );
  });

  it("never lies on tile or on other trim, whatever the steps", () => {
    const random = randomFrom(20261126);
    for (let round = 0; round < 40; round++) {
      const count = random.integer(2, 5);
      const heights = Array.from(
        { length: count },
        (_, i) => 200 + 13 * (i % 2) + 37 * random.integer(0, 7),
      );
      const corners = heights.flatMap((height, i) => {
        const [from, to] = [(600 / count) * i, (600 / count) * (i + 1)].map(Math.round);
        return [`${from} , ${height}`, `${to} , ${height}`];
      });
      const outline = ["0, 0", ...corners, "600, 0"].join(" to ").replaceAll(" ,", ",");
      const kinds = ["free trim edging", "free", "wall movement 3"];
      const kind = () => random.pick(kinds);
      const sides = ["left", "right", "top"].map((side) => `${side} ${kind()}`);
      runsOf(outline, ...sides);
    }
  });
});
