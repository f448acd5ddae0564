import assert from "node:assert/strict";
import { hatchPath, type HatchRun } from "../../../src/drawing/svg/hatch-path.js";

type Line = [number, number, number, number];

function linesOf(path: string): Line[] {
  return [...path.matchAll(/M(\S+) ([^HVL]+)(?:H([^M]+)|V([^M]+)|L(\S+) ([^M]+))/g)].map(
    ([, x, y, across, up, x2, y2]) => [x, y, across ?? x2 ?? x, up ?? y2 ?? y].map(Number) as Line,
  );
}

const SQUARE = [[0, 0, 100, 0, 100, -100, 0, -100]];
/** An L: the upper right quarter is missing. */
const NOTCHED = [[0, 0, 100, 0, 100, -50, 50, -50, 50, -100, 0, -100]];
const ruling = (run: HatchRun, spacing = 10, inset = 0) => ({ run, spacing, inset });

describe("a hatch's lines", () => {
  it("stand evenly apart over a square, from edge to edge", () => {
    const lines = linesOf(hatchPath(SQUARE, ruling("level", 30)));
    assert.deepEqual(lines, [
      [0, -90, 100, -90],
      [0, -60, 100, -60],
      [0, -30, 100, -30],
    ]);
    assert.deepEqual(linesOf(hatchPath(SQUARE, ruling("upright", 30)))[1], [30, -100, 30, 0]);
  });

  it("rise or fall at 45 degrees, their spacing measured across themselves", () => {
    for (const [run, slope] of [
      ["rising", -1],
      ["falling", 1],
    ] as const) {
      const lines = linesOf(hatchPath(SQUARE, ruling(run)));
      assert.ok(lines.length > 12);
      for (const [x1, y1, x2, y2] of lines) {
        if (x2 - x1 > 1) assert.ok(Math.abs((y2 - y1) / (x2 - x1) - slope) < 0.01);
      }
      const total = lines.reduce((sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1), 0);
      // Lines `spacing` apart cover area / spacing of length.
      assert.ok(Math.abs(total - 1000) < 60, `${total}`);
    }
  });

  it("stay inside a notched piece and out of its hole", () => {
    const hole = [20, -20, 20, -30, 30, -30, 30, -20];
    for (const run of ["level", "upright", "rising", "falling"] as const) {
      for (const [x1, y1, x2, y2] of linesOf(hatchPath([...NOTCHED, hole], ruling(run, 7)))) {
        const [x, y] = [(x1 + x2) / 2, (y1 + y2) / 2];
        assert.ok(!(x > 50.01 && y < -50.01), `${run} is out of the notch: ${x} ${y}`);
        assert.ok(
          !(x > 20.01 && x < 29.99 && y < -20.01 && y > -29.99),
          `${run} is out of the hole`,
        );
      }
    }
  });

  it("keep off the edges by their inset, and leave out what is too short", () => {
    const lines = linesOf(hatchPath(SQUARE, ruling("level", 30, 5)));
    assert.deepEqual(lines[0], [5, -90, 95, -90]);
    assert.equal(hatchPath([[0, 0, 8, 0, 8, -100, 0, -100]], ruling("level", 30, 5)), "");
  });

  it("stay where they are when the shape grows", () => {
    const wider = [[0, 0, 140, 0, 140, -100, 0, -100]];
    const before = linesOf(hatchPath(SQUARE, ruling("rising"))).map(([x, y]) => [x, y]);
    const after = linesOf(hatchPath(wider, ruling("rising"))).map(([x, y]) => [x, y]);
    for (const [x, y] of before) {
      if (x === 0) assert.ok(after.some(([a, b]) => a === x && b === y));
    }
  });
});
