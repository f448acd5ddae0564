import assert from "node:assert/strict";
import { wholeTilesJson } from "../../../src/sheets/options/whole-tiles-json.js";
import { bench, RUNNING, STATED, TWO_LAYS } from "./bench.js";

const INCH = 25.4;

describe("wholeTilesJson", () => {
  it("says of each opening which lay of its wall it lies in", () => {
    const { openings, top } = wholeTilesJson(bench(TWO_LAYS).wall) as {
      openings: readonly { name: string; lay: string }[];
      top: object;
    };
    assert.deepEqual(
      openings.map(({ name, lay }) => [name, lay]),
      [
        ["low", "dado"],
        ["shelf", "field"],
      ],
    );
    assert.deepEqual(top, { whole: false, below: 62.125 * INCH, above: rounded(64.25 * INCH) });
  });

  it("has the heights of a bench", () => {
    const seat = "  bench seat {\n    at 1\n    size 6 x 5\n    movement 1/8\n  }\n  hole tap";
    const { rests } = wholeTilesJson(bench(STATED.replace("  hole tap", seat)).wall) as {
      rests: { name: string; lay: string; edge: string; whole: boolean }[];
    };
    assert.deepEqual(
      rests.map(({ name, lay, edge, whole }) => [name, lay, edge, whole]),
      [["seat", "field", "top", false]],
    );
  });

  it("has places and sizes in mm, exactly, and the courses whose joints are met", () => {
    const { wall } = bench(RUNNING);
    assert.deepEqual(wholeTilesJson(wall), {
      openings: [
        {
          name: "shelf",
          lay: "field",
          onJoints: false,
          moved: {
            at: [12.375 * INCH, 12.6875 * INCH].map(rounded),
            size: [6 * INCH, 6 * INCH].map(rounded),
            tiles: [1, 2],
            courses: [5, 6],
            uprightsOnJointsIn: [5],
          },
          sized: {
            at: [12.3125 * INCH, 12.5625 * INCH].map(rounded),
            size: [6.125 * INCH, 6.25 * INCH].map(rounded),
            tiles: [1, 2],
            courses: [5, 6],
            uprightsOnJointsIn: [5],
          },
          sizes: {
            across: [
              { tiles: 1, size: rounded(6.125 * INCH) },
              { tiles: 2, size: rounded(12.25 * INCH) },
            ],
            up: [
              { tiles: 1, size: rounded(3.125 * INCH) },
              { tiles: 2, size: rounded(6.25 * INCH) },
              { tiles: 3, size: rounded(9.375 * INCH) },
            ],
          },
        },
      ],
      rests: [],
      holes: [
        {
          name: "tap",
          tile: [6.1875 * INCH, 4.75 * INCH].map(rounded),
          joint: [9.25 * INCH, 4.75 * INCH].map(rounded),
        },
      ],
      top: { whole: false, below: rounded(22 * INCH), above: rounded(25.125 * INCH) },
    });
  });
});

/** What the sums of binary fractions leave. */
function rounded(mm: number): number {
  return Math.round(mm * 1e6) / 1e6;
}
