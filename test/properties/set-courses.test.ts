import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import {
  cutOf,
  pieceBounds,
  pieceId,
  pieceShape,
  type SolvedWall,
  visibleShapes,
} from "../../src/solver/index.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, GRID, randomSketch } from "../support/random-sketch.js";
import { randomFrom } from "../support/random.js";
import type { SetSketch, Sketch, WallSketch } from "../support/sketch.js";
import { solveClean } from "../support/solve-text.js";
import { mirrored, writtenDown } from "../support/turn-sketch.js";

const PLANS = 40;

describe(`courses of ${PLANS} random plans that are set`, () => {
  it("as they were solved, leave every piece what it was: its id, its place, its cut, what is seen of it", () => {
    eachSketch(({ sketch, plain, told }) => {
      const courses = coursesOf(plain);
      for (const to of new Set([1, Math.ceil(courses / 2), courses, courses + 3])) {
        const frozen = solved(withSet(sketch, { from: 1, to, tops: [] }));
        assert.deepEqual(piecesOf(frozen), piecesOf(plain), `${to} set; ${told}`);
        assert.deepEqual(tiledOf(frozen), tiledOf(plain), `${to} set; ${told}`);
      }
    });
  });

  it("may begin with any course, those under it being still to come", () => {
    eachSketch(({ sketch, plain, told }) => {
      if (coursesOf(plain) < 2) return;
      const frozen = solved(withSet(sketch, { from: 2, to: 2, tops: [] }));
      assert.deepEqual(piecesOf(frozen), piecesOf(plain), told);
    });
  });

  it("with their top measured where it is planned, leave every piece what it was", () => {
    eachSketch(({ sketch, plain, told }) => {
      const to = Math.ceil(coursesOf(plain) / 2);
      const y = topOf(plain, to);
      const frozen = solved(withSet(sketch, { from: 1, to, tops: [{ at: null, y }] }));
      assert.deepEqual(piecesOf(frozen), piecesOf(plain), told);
    });
  });

  it("are followed one joint over their highest measured top, whatever it is; head joints go on", () => {
    let moved = 0;
    eachSketch(({ sketch, plain, told, random }) => {
      const to = Math.max(1, coursesOf(plain) - 2);
      const planned = topOf(plain, to);
      const off = GRID * random.integer(-4, 8);
      const tops = [
        { at: "left" as const, y: planned + off },
        { at: "right" as const, y: planned + off - GRID * random.integer(0, 3) },
      ];
      const wall = solved(withSet(sketch, { from: 1, to, tops }));
      const [set, rest] = wall.lays;
      if (!set!.stand!.reached || !rest) return;
      moved++;
      assert.equal(set!.stand!.top, planned + off, told);
      assert.equal(rest.courses[0]!.bottom, planned + off + rest.joint, told);
      assert.equal(rest.below, to, told);
      const module = set!.lattice.face.across + set!.joint;
      const [before] = plain.lays;
      const shift = (lay: typeof rest, course: number) =>
        lay.lattice.x +
        Math.round((((course - 1) % lay.lattice.q) * lay.lattice.p * module) / lay.lattice.q);
      assert.equal((shift(before!, to + 1) - rest.lattice.x) % module, 0, told);
    });
    assert.ok(moved > PLANS / 2, `${moved} tops were reached`);
  });

  it("keep their first course where it was and share out what their top is off, cutting no plain tile otherwise", () => {
    let spread = 0;
    eachSketch(({ sketch, plain, told, random }) => {
      const to = coursesOf(plain) - 1;
      if (to < 2) return;
      const planned = topOf(plain, to);
      const y = planned + GRID * random.integer(-2, 6);
      const wall = solved(withSet(sketch, { from: 1, to, tops: [{ at: null, y }] }));
      const [set] = wall.lays;
      if (!set!.stand!.reached) return;
      spread++;
      const [before] = plain.lays;
      assert.equal(set!.courses[0]!.bottom, before!.courses[0]!.bottom, told);
      // Rounded down once for all bed joints: less than a nanometre for each.
      const short = y - set!.courses.at(-1)!.top;
      const gaps = to - 1;
      const unspread = set!.stand!.bed === set!.joint;
      assert.ok(unspread || (short >= 0 && short < gaps), `${short} nm short; ${told}`);
      const was = new Map(plainTiles(plain).map(({ id, width, height }) => [id, [width, height]]));
      for (const { id, width, height } of plainTiles(wall)) {
        if (was.has(id) && Number(id.split("/")[1]) <= to)
          assert.deepEqual([width, height], was.get(id), `${id}; ${told}`);
      }
    });
    assert.ok(spread > PLANS / 3, `${spread} tops were reached`);
  });

  it("leave out a top that no bed joint can come to: all stays as planned", () => {
    eachSketch(({ sketch, plain, told }) => {
      const { tile } = sketch;
      const y = topOf(plain, 1) + tile.up * 2;
      const frozen = solved(withSet(sketch, { from: 1, to: 1, tops: [{ at: null, y }] }));
      assert.equal(frozen.lays[0]!.stand!.reached, false);
      assert.deepEqual(piecesOf(frozen), piecesOf(plain), told);
    });
  });

  it("never lie over what is over them, wherever their top was measured", () => {
    eachSketch(({ sketch, plain, told, random }) => {
      const to = Math.ceil(coursesOf(plain) / 2);
      const y = topOf(plain, to) + GRID * random.integer(-300, 300);
      const wall = solved(withSet(sketch, { from: 1, to, tops: [{ at: null, y }] }));
      const [set, rest] = wall.lays;
      const reach = Math.max(...boxes(set).map(({ top }) => top));
      for (const { bottom } of boxes(rest)) assert.ok(bottom >= reach, `${y}; ${told}`);
    });
  });

  it("are the same nanometres in inches and in millimetres", () => {
    eachSketch(({ sketch, plain, told }) => {
      const to = Math.ceil(coursesOf(plain) / 2);
      const y = GRID * Math.round(topOf(plain, to) / GRID + 2);
      const set = withSet(sketch, { from: 1, to, tops: [{ at: null, y }] });
      assert.deepEqual(piecesOf(solved(set, "inch")), piecesOf(solved(set)), told);
    });
  });

  it("are mirrored in the mirror image of their wall", () => {
    eachSketch(({ sketch, plain, told }) => {
      const to = Math.ceil(coursesOf(plain) / 2);
      const y = topOf(plain, to);
      const tops = [
        { at: "left" as const, y: y + 2 * GRID },
        { at: 3 * GRID, y },
      ];
      const set = withSet(sketch, { from: 1, to, tops });
      const [here, there] = [solved(set), solved(mirrored(set))];
      assert.deepEqual(
        there.lays.map(({ stand, courses }) => ({ stand, courses })),
        here.lays.map(({ stand, courses }) => ({ stand, courses })),
        told,
      );
    });
  });
});

interface Given {
  /** Of one wall, its start written down. */
  readonly sketch: Sketch;
  readonly plain: SolvedWall;
  readonly told: string;
  readonly random: ReturnType<typeof randomFrom>;
}

function eachSketch(check: (given: Given) => void): void {
  for (let seed = 0; seed < PLANS; seed++) {
    const drawn = randomSketch(seed, { ...ANY, corners: false });
    const text = printSketch(drawn, "mm");
    const sketch = writtenDown(drawn, solveClean(text).solved);
    const plain = solved(sketch);
    if (plain.lays.length === 0 || coursesOf(plain) === 0) continue;
    check({
      sketch,
      plain,
      told: `seed ${seed}\n${printSketch(sketch, "mm")}`,
      random: randomFrom(seed),
    });
  }
}

function withSet(sketch: Sketch, set: SetSketch): Sketch {
  const frozen = (wall: WallSketch): WallSketch => ({ ...wall, lay: { ...wall.lay, set } });
  return { ...sketch, walls: sketch.walls.map(frozen) };
}

function solved(sketch: Sketch, units: "mm" | "inch" = "mm"): SolvedWall {
  return solveClean(printSketch(sketch, units)).solved.walls[0]!;
}

function coursesOf({ lays }: SolvedWall): number {
  return lays.reduce((sum, { courses }) => sum + courses.length, 0);
}

function topOf({ lays }: SolvedWall, course: number): Nm {
  return lays[0]!.courses[course - 1]!.top;
}

function piecesOf({ lays }: SolvedWall): unknown[] {
  return lays.flatMap((lay) =>
    Array.from({ length: lay.pieces.count }, (_, i) => ({
      id: pieceId(lay, i),
      cut: cutOf(lay.pieces, i),
      shape: pieceShape(lay.pieces, i),
      seen: visibleShapes(lay.pieces, i),
    })),
  );
}

/** Which courses there are, and where. */
function tiledOf({ lays }: SolvedWall): unknown[] {
  return lays.flatMap(({ courses, below }) =>
    courses.map(({ number, bottom, top }) => ({ number: below + number, bottom, top })),
  );
}

function boxes(lay: SolvedWall["lays"][number] | undefined) {
  return Array.from({ length: lay?.pieces.count ?? 0 }, (_, i) => pieceBounds(lay!.pieces, i));
}

/** Pieces that nothing but the upright sides cuts. */
function plainTiles({ lays }: SolvedWall) {
  return lays.flatMap((lay) =>
    boxes(lay).flatMap(({ left, bottom, right, top }, i) => {
      const isPlain = ["none", "end"].includes(cutOf(lay.pieces, i));
      return isPlain ? [{ id: pieceId(lay, i), width: right - left, height: top - bottom }] : [];
    }),
  );
}
