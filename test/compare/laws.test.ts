import assert from "node:assert/strict";
import fc from "fast-check";
import {
  compare,
  type ComparedPlan,
  type Comparison,
  isEmpty,
  totalsOf,
} from "../../src/compare/index.js";
import { takeoff, type Takeoff } from "../../src/takeoff/index.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, GRID, randomSketch } from "../support/random-sketch.js";
import { randomFrom } from "../support/random.js";
import type { Sketch, WallSketch } from "../support/sketch.js";
import { told } from "./wall.js";

const seeds = fc.integer({ min: 1, max: 1_000_000 });
const RUNS = { numRuns: 60, seed: 20261125 };

/** A plan and the same with a few things changed. */
function changedPlans(seed: number): [ComparedPlan, ComparedPlan] {
  const sketch = randomSketch(seed, ANY);
  const changed = changedSketch(sketch, seed);
  return [sketch, changed].map((each) => told(printSketch(each, "inch"))) as [
    ComparedPlan,
    ComparedPlan,
  ];
}

function changedSketch(sketch: Sketch, seed: number): Sketch {
  const random = randomFrom(seed + 7);
  const by = () => GRID * random.integer(-40, 40);
  const change = (wall: WallSketch): WallSketch => {
    const kinds = ["size", "joint", "start", "openings", "name", "none"] as const;
    switch (random.pick(kinds)) {
      case "size":
        return { ...wall, across: wall.across + Math.abs(by()), up: wall.up + Math.abs(by()) };
      case "joint":
        return { ...wall, lay: { ...wall.lay, joint: GRID * random.integer(1, 12) } };
      case "start":
        return { ...wall, lay: { ...wall.lay, up: { jointAt: GRID * random.integer(0, 200) } } };
      case "openings":
        return { ...wall, openings: wall.openings.slice(1), holes: [] };
      case "name":
        return sketch.walls.length > 1 ? wall : { ...wall, name: "elsewhere" };
      case "none":
        return wall;
    }
  };
  const walls = sketch.walls.map((wall) => change(change(wall)));
  const other = random.chance(0.3)
    ? { ...sketch, tile: { ...sketch.tile, up: sketch.tile.up + GRID } }
    : sketch;
  return { ...other, walls };
}

/** The comparison with before and after exchanged, as the way back must give it. */
function mirrored(value: unknown): unknown {
  if (Array.isArray(value)) return inAnyOrder(value.map(mirrored));
  if (typeof value !== "object" || value === null) return value;
  const swap: Record<string, string> = {
    before: "after",
    after: "before",
    fresh: "gone",
    gone: "fresh",
  };
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, each]) => {
        const negative = key === "by" || key === "shift";
        return [swap[key] ?? key, negative ? negated(each) : mirrored(each)] as const;
      })
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return inAnyOrder(value.map(sorted));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, each]) => [key, sorted(each)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

/** Lists are compared as sets: the order of telling follows the plan after. */
function inAnyOrder(list: readonly unknown[]): unknown[] {
  return [...list].sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));
}

function negated(value: unknown): unknown {
  if (typeof value === "number") return 0 - value;
  if (Array.isArray(value)) return inAnyOrder(value.map(negated));
  if (typeof value !== "object" || value === null) return value;
  return sorted(
    Object.fromEntries(Object.entries(value).map(([key, each]) => [key, negated(each)])),
  );
}

/** An opening that is in both is told by its kind after; everything else is told both ways. */
function plain(comparison: Comparison): unknown {
  return JSON.parse(JSON.stringify(comparison));
}

describe("a comparison", () => {
  it("of a plan with itself is empty", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const plan = told(printSketch(randomSketch(seed, ANY), "inch"));
        const again = told(`# again\n${printSketch(randomSketch(seed, ANY), "inch")}`);
        const comparison = compare(plan, again);
        assert.ok(isEmpty(comparison));
        for (const quantity of comparison.quantities) {
          const { before, after } = "pieces" in quantity ? quantity.pieces : quantity.amount;
          assert.equal(before, after);
        }
        const { kept, ...others } = totalsOf(compare(plan, plan));
        assert.deepEqual(others, { moved: 0, recut: 0, fresh: 0, gone: 0 });
        assert.equal(kept, piecesIn(plan));
      }),
      RUNS,
    );
  });

  it("of the same plan in inches and in millimetres is empty", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const sketch = randomSketch(seed, ANY);
        const [inches, metric] = [printSketch(sketch, "inch"), printSketch(sketch, "mm")].map(told);
        assert.ok(isEmpty(compare(inches!, metric!)));
      }),
      RUNS,
    );
  });

  it("the other way round is its mirror image", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const [before, after] = changedPlans(seed);
        assert.deepEqual(
          mirrored(plain(compare(before, after))),
          sorted(plain(compare(after, before))),
        );
      }),
      RUNS,
    );
  });

  it("puts every piece of both plans into one of five fates", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const [before, after] = changedPlans(seed);
        const { kept, moved, recut, fresh, gone } = totalsOf(compare(before, after));
        assert.equal(kept + moved + recut + gone, piecesIn(before));
        assert.equal(kept + moved + recut + fresh, piecesIn(after));
      }),
      RUNS,
    );
  });

  it("tells quantities that lead from the one plan to the other", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const [before, after] = changedPlans(seed);
        const [had, has] = [takeoff(before.solved), takeoff(after.solved)];
        for (const quantity of compare(before, after).quantities) {
          if (!("pieces" in quantity)) continue;
          const { kind, name, pieces } = quantity;
          const difference = pieces.after - pieces.before;
          assert.equal(needed(had, kind, name.before) + difference, needed(has, kind, name.after));
        }
        const volume = ({ materials }: Takeoff) =>
          materials.grout.reduce((sum, each) => sum + each.volume, 0);
        const grout = compare(before, after).quantities.find(({ kind }) => kind === "grout");
        assert.ok(grout && "amount" in grout);
        const difference = grout.amount.after - grout.amount.before;
        assert.equal(volume(had) + difference, volume(has));
      }),
      RUNS,
    );
  });

  it("of a wall whose start alone is shifted says moved of every piece that keeps its cut", () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 1, max: 30 }), (seed, shift) => {
        const text = (at: number) => shiftedWall(seed, at * GRID);
        const [before, after] = [told(text(400)), told(text(400 + shift))];
        const comparison = compare(before, after);
        const wall = comparison.walls[0]!;
        assert.deepEqual(wall.shift, { up: shift * GRID, across: [0] });
        for (const { by } of wall.pieces.moved) {
          assert.deepEqual(by, { across: 0, up: shift * GRID });
        }
        // Pieces between the lowest and the highest course are whole or cut at the ends alone.
        assert.equal(wall.pieces.kept, 0);
        for (const { before: old, after: now } of wall.pieces.recut) {
          assert.notDeepEqual([old.width, old.height], [now.width, now.height]);
        }
      }),
      RUNS,
    );
  });
});

function piecesIn({ solved }: ComparedPlan): number {
  return solved.walls
    .flatMap((wall) => wall.lays)
    .reduce((sum, { pieces }) => sum + pieces.count, 0);
}

/** A stack-bonded wall without openings, its bed joint at this height; courses are over 30 GRID high. */
function shiftedWall(seed: number, jointAt: number): string {
  const random = randomFrom(seed);
  const tile = { across: GRID * random.integer(70, 300), up: GRID * random.integer(70, 300) };
  const sketch = randomSketch(seed, { measured: 0, holes: false, corners: false, most: 8 });
  const side = { meets: "wall", measured: [], movement: GRID * 4 };
  const wall: WallSketch = {
    ...sketch.walls[0]!,
    across: tile.across * 7 + GRID * 3,
    up: tile.up * 5 + GRID * random.integer(0, 60),
    sides: { left: side, right: side, bottom: side, top: side },
    openings: [],
    holes: [],
    lay: { bond: "stack", joint: 4 * GRID, across: { full: "left" }, up: { jointAt } },
  };
  return printSketch({ ...sketch, tile: { ...sketch.tile, ...tile }, walls: [wall] }, "inch");
}

function needed({ tiles, trims }: Takeoff, kind: "tile" | "trim", name: string | null): number {
  return kind === "tile"
    ? (tiles.find(({ tile }) => tile.name === name)?.needed ?? 0)
    : (trims.find(({ trim }) => trim.name === name)?.bought ?? 0);
}
