import assert from "node:assert/strict";
import { boundsOf, doubleShapeArea, type TrimRun } from "../../../src/solver/index.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { randomFrom } from "../../support/random.js";
import { firstWall } from "../../support/solve-text.js";
import { outlinedWall } from "./outlined-wall.js";

const MM = 1_000_000;

const runsOf = (outline: string, ...sides: readonly string[]): readonly TrimRun[] =>
  firstWall(outlinedWall(outline, ...sides)).wall.trims;

const ALL = ["left free trim edging", "right free trim edging", "top free trim edging"];

/** Lengths in whole millimetres, and the ends that are no square cut. */
const toldOf = (runs: readonly TrimRun[]): string[] =>
  runs.flatMap(({ side, pieces }) =>
    pieces.map(({ length, mitre }) =>
      `${side} ${Math.round(length / MM)} ${mitre.join("+")}`.trim(),
    ),
  );

describe("trim along a slope", () => {
  it("is as long as the slope, cut plumb at the uprights beside it, which are cut along it", () => {
    // 3 across on 4: 800 across and 600 up are 1000; the right end is 900 high, the left 300.
    const runs = runsOf("0, 0 to 800, 0 to 800, 900 to 0, 300", ...ALL);
    // From the outer edge at 22 to 778, 756 across are 945; the inner edge of a plumb cut is as far along,
    // 20 x 3/4 further on, so that it is 15 longer.
    assert.deepEqual(toldOf(runs), ["left 312 top", "right 897 top", "top 960 left+right"]);
  });

  it("is mitred where it bends, with its joint square to the mitre", () => {
    const runs = runsOf("0, 0 to 800, 0 to 800, 300 to 400, 600 to 0, 300", ...ALL);
    const tops = runs.filter(({ side }) => side === "top");
    assert.deepEqual(
      tops.map(({ pieces }) => pieces.map(({ mitre }) => mitre.join("+"))),
      [["left+right"], ["left+right"]],
    );
    // The mitre at the ridge is plumb, so that the joint of 2 lies level between both.
    const [one, other] = tops.map(({ pieces }) => boundsOf(pieces[0]!.shape.outline));
    assert.equal(other!.left - one!.right, 2 * MM);
    assert.equal(one!.right, 399 * MM);
  });

  it("turns away from the tile in a valley", () => {
    const runs = runsOf("0, 0 to 800, 0 to 800, 600 to 400, 300 to 0, 600", ...ALL);
    const [one, other] = runs
      .filter(({ side }) => side === "top")
      .map(({ pieces }) => boundsOf(pieces[0]!.shape.outline));
    assert.equal(other!.left - one!.right, 2 * MM);
  });

  it("is as wide as it is, whatever the slope", () => {
    const [, , top] = runsOf("0, 0 to 800, 0 to 800, 900 to 0, 300", ...ALL);
    const { shape, length } = top!.pieces[0]!;
    // A parallelogram: 945 long at its outer and its inner edge.
    const area = Number(doubleShapeArea(shape)) / 2 / MM ** 2;
    assert.ok(Math.abs(area - 945 * 20) < 0.01, `${area}`);
    assert.equal(Math.round(length / MM), 960);
  });

  it("goes along a steep side, to the outer edge over it", () => {
    const runs = runsOf("0, 0 to 800, 0 to 600, 600 to 0, 600", ...ALL);
    assert.deepEqual(
      toldOf(runs).map((told) => told.replace(/\d+/, "N")),
      ["left N", "right N bottom+top", "top N right"],
    );
    const [, right] = runs;
    assert.equal(boundsOf(right!.pieces[0]!.shape.outline).top, 600 * MM);
  });

  it("stops at an opening that comes into it, as tile does, and leaves be one whose soft joint alone does", () => {
    // The window's upper left corner is the nearest to the slope: 25 or 15 square to it, which are 31.25 or 18.75 up.
    const tops = (y: number) =>
      runsOf(
        "0, 0 to 800, 0 to 800, 900 to 0, 300",
        "left wall movement 3",
        "right wall movement 3",
        "top free trim edging",
        `window sash {\n at 300, ${y - 100}\n size 100 x 100\n movement 10\n}`,
      ).filter(({ side }) => side === "top");
    assert.equal(tops(525 - 31.25).length, 1);
    const [before, after] = tops(525 - 18.75).map(({ pieces }) =>
      boundsOf(pieces[0]!.shape.outline),
    );
    // Tile, and so the trim, ends 10 before the window's left side. It goes on, plumb again, where its inner edge is past
    // the top of the window's joint: that is 25 under the slope, at 516.25 where the slope is at 541.25.
    assert.equal(before!.right, 290 * MM);
    assert.ok(Math.abs(after!.left - (241.25 / 0.75) * MM) < 5);
  });

  it("is whole in each length that nothing cuts", () => {
    // 8 across on 3: the corners along such a slope are no whole nanometres.
    const runs = runsOf("0, 0 to 4000, 0 to 4000, 3000 to 0, 1500", ...ALL);
    const top = runs.find(({ side }) => side === "top")!;
    const full = Math.max(...top.pieces.map(({ length }) => Math.round(length / MM)));
    assert.ok(top.pieces.length > 3);
    assert.deepEqual(
      top.pieces.map(({ whole }) => whole),
      top.pieces.map(({ length, mitre }) => mitre.length === 0 && Math.round(length / MM) === full),
    );
  });

  it("is counted by its true length, with the hands of its slanted ends", () => {
    const { solved } = outlinedWall("0, 0 to 800, 0 to 800, 900 to 0, 300", ...ALL);
    const [trim] = takeoff(solved).trims;
    assert.deepEqual(
      trim!.pieces.map(({ length, mitred }) => [Math.round(length / MM), mitred.join("+")]),
      // Seen with the finished edge up the right end's top is at its left, the left end's at its right.
      [
        [960, "left+right"],
        [897, "left"],
        [312, "right"],
      ],
    );
  });

  it("is cut by a mitre that runs, rounded, through the corner of what is laid", () => {
    const tops = [
      "0, 0 to 600, 0 to 600, 454 to 300, 531 to 0, 349",
      "0, 0 to 600, 0 to 600, 307 to 400, 475 to 200, 440 to 0, 538",
      "0, 0 to 600, 0 to 600, 335 to 400, 510 to 200, 489 to 0, 559",
    ].map((outline) => runsOf(outline, ...ALL).filter(({ side }) => side === "top"));
    assert.deepEqual(
      tops.map((runs) => runs.length),
      [2, 3, 3],
    );
  });

  it("never lies on tile or on other trim, whatever the slopes", () => {
    const random = randomFrom(20261126);
    let runs = 0;
    for (let round = 0; round < 40; round++) {
      const count = random.integer(1, 3);
      const heights = Array.from({ length: count + 1 }, () => 300 + 7 * random.integer(0, 40));
      const corners = heights.map((height, i) => `${Math.round((600 / count) * i)}, ${height}`);
      const outline = ["0, 0", "600, 0", ...corners.reverse()].join(" to ");
      const kinds = ["free trim edging", "free", "wall movement 3"];
      const sides = ["left", "right", "top"].map((side) => `${side} ${random.pick(kinds)}`);
      runs += runsOf(outline, ...sides).length;
    }
    assert.ok(runs > 40);
  });
});
