import assert from "node:assert/strict";
import {
  isEmpty,
  needsMoreTiles,
  newFindings,
  totalsOf,
  wallChanged,
} from "../../src/compare/index.js";
import { wallTotals } from "../../src/compare/totals.js";
import { comparisonOf, edited, WALL } from "./wall.js";

const MOVED = edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]);

describe("totals", () => {
  const comparison = comparisonOf(WALL, MOVED);

  it("count each fate", () => {
    assert.deepEqual(totalsOf(comparison), { kept: 57, moved: 0, recut: 1, fresh: 1, gone: 0 });
    assert.deepEqual(wallTotals(comparison.walls[0]!), totalsOf(comparison));
  });

  it("know whether anything changed", () => {
    assert.ok(!isEmpty(comparison) && wallChanged(comparison.walls[0]!));
    const same = comparisonOf(WALL, `# a comment\n${WALL}`);
    assert.ok(isEmpty(same) && !wallChanged(same.walls[0]!));
  });

  it("count errors and warnings that are new, and none that went or are waived", () => {
    assert.equal(newFindings(comparison), 2);
    assert.equal(newFindings(comparisonOf(MOVED, WALL)), 0);
    const waived = edited(MOVED, [
      "bond stack",
      'bond stack\n    allow cut/sliver "hidden by the shelf"',
    ]);
    assert.equal(newFindings(comparisonOf(WALL, waived)), 1);
    assert.equal(newFindings(comparisonOf(waived, MOVED)), 1);
  });

  it("know whether more tiles are needed", () => {
    const wider = edited(WALL, ["size 41 3/8", "size 45 1/2"]);
    assert.ok(needsMoreTiles(comparisonOf(WALL, wider)));
    assert.ok(!needsMoreTiles(comparisonOf(wider, WALL)));
    assert.ok(!needsMoreTiles(comparisonOf(WALL, WALL)));
  });
});
