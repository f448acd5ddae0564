import assert from "node:assert/strict";
import type { Lay, Plan, Wall } from "../../src/model/index.js";
import { bareWall, MOST_PIECES, MOST_SCRIBED, refusals } from "../../src/solver/refusals.js";
import { layOf, sidesOf, wallOf, type Several } from "./several-lays.js";

const field = layOf("field");
/** Tile of 1 x 1 and joints of 2: a module of 3. */
const tiny: Lay = { ...field, tile: { ...field.tile, face: { across: 1, up: 1 } } };

/**
 * 3300 wide and high, 3294 of it tiled: 1098 modules, and one more at either end where they don't
 * begin with it, so 1100 x 1100 pieces at most.
 */
const PIECES = 1_210_000;
const SIZE = [3300, 3300] as const;

function wallWith(lays: readonly Lay[], given: Several = {}): { plan: Plan; wall: Wall } {
  const { plan, wall } = wallOf(lays, { size: SIZE, ...given });
  return { plan: { ...plan, walls: [wall] }, wall };
}

describe("walls that ask for too many pieces", () => {
  it("stay bare; others don't", () => {
    assert.deepEqual(refusals(wallWith([tiny]).plan), [null]);
    // 9994 of module 3 are 3331.3 modules: 3334 x 3334 pieces.
    const { plan } = wallWith([tiny], { size: [10_000, 10_000] });
    assert.deepEqual(refusals(plan), [{ pieces: 11_115_556, most: MOST_PIECES }]);
  });

  it("are those with which the plan would pass the most, in its order", () => {
    const { plan, wall } = wallWith([tiny]);
    const small: Wall = { ...wall, size: { across: 300, up: 300 } };
    const told = refusals({ ...plan, walls: [wall, wall, small] });
    assert.deepEqual(told, [null, { pieces: PIECES, most: MOST_PIECES }, null]);
  });

  it("ask for those of all their lays, each as if it had the whole wall", () => {
    const { plan } = wallWith([tiny, { ...tiny, name: "other" }]);
    assert.deepEqual(refusals(plan), [{ pieces: 2 * PIECES, most: MOST_PIECES }]);
    assert.deepEqual(refusals(wallWith([tiny, field]).plan), [null]);
  });

  it("ask for those up to the highest place that they may stop at", () => {
    // 6594 of module 3 are 2198 modules: 2200 courses of 1100.
    const { plan, wall } = wallWith([tiny]);
    const open: Wall = { ...wall, stop: { min: 3300, max: 6600 } };
    const told = refusals({ ...plan, walls: [open] });
    assert.deepEqual(told, [{ pieces: 2 * PIECES, most: MOST_PIECES }]);
  });

  it("ask for none where they have no lay", () => {
    assert.deepEqual(refusals(wallWith([]).plan), [null]);
  });
});

describe("walls that ask for too many scribed pieces", () => {
  const falling = (by: number): NonNullable<Several["sides"]> => ({
    bottom: { measured: [0, 3300].map((at) => ({ at, off: (at / 3300) * by })) },
  });

  it("stay bare", () => {
    // A bottom that rises by 150 runs through 50 + 2 courses of 1100.
    const { plan } = wallWith([tiny], { sides: falling(150) });
    assert.deepEqual(refusals(plan), [{ pieces: 57_200, most: MOST_SCRIBED }]);
  });

  it("are none with a side that rises less", () => {
    // By 120 through 40 + 2 courses: 46,200.
    assert.deepEqual(refusals(wallWith([tiny], { sides: falling(120) }).plan), [null]);
  });
});

describe("a bare wall", () => {
  it("has its region, nothing in it, and why", () => {
    const { plan, wall } = wallWith([tiny]);
    const why = { pieces: 3, most: 2 };
    const { region, lays, trims, refused } = bareWall(plan, wall, why);
    assert.deepEqual(sidesOf(region.bounds), [3, 3, 3297, 3297]);
    assert.deepEqual([lays, trims, refused], [[], [], why]);
  });
});
