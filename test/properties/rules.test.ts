import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import { sliverLimit } from "../../src/model/index.js";
import { check, RULES } from "../../src/rules/index.js";
import { pieceId, type SolvedPlan, visibleBounds } from "../../src/solver/index.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import type { Sketch, WallSketch } from "../support/sketch.js";
import { solveClean } from "../support/solve-text.js";
import { mirrored } from "../support/turn-sketch.js";

const PLANS = 200;

describe(`the rules on ${PLANS} random plans`, () => {
  it("say of a mirrored plan what they say of the plan", () => {
    for (let seed = 0; seed < PLANS; seed++) {
      const sketch = evenly(randomSketch(seed, { ...SQUARE, holes: true }));
      const text = printSketch(sketch, "mm");
      const there = solveClean(printSketch(mirrored(sketch), "mm")).solved;
      assert.deepEqual(
        summaryOf(there),
        summaryOf(solveClean(text).solved),
        `seed ${seed}\n${text}`,
      );
    }
  });

  it("tell as slivers exactly the cut pieces that are seen too small, in any order of looking", () => {
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, SQUARE), "mm");
      const { solved } = solveClean(text);
      const told = check(solved)
        .filter(({ code }) => code === "cut/sliver")
        .flatMap(({ pieces }) => pieces ?? []);
      assert.deepEqual([...new Set(told)].sort(), sliversOf(solved), `seed ${seed}\n${text}`);
    }
  });

  it("speak of pieces that are there, inside the text, by codes of the table", () => {
    const codes = new Set(RULES.map(({ code }) => code));
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, ANY), "inch");
      const lines = text.split("\n");
      const { solved } = solveClean(text);
      const ids = new Set(idsOf(solved));
      for (const { code, pieces, range, message } of check(solved)) {
        assert.ok(codes.has(code), code);
        assert.ok(
          (pieces ?? []).every((id) => ids.has(id)),
          `${code}: ${message}`,
        );
        assert.equal(new Set(pieces).size, (pieces ?? []).length, `${code}: ${message}`);
        const line = lines[range.start.line];
        assert.ok(line !== undefined && range.end.character <= line.length, message);
        assert.doesNotMatch(message, /NaN|Infinity|undefined/);
      }
    }
  });
});

/** Courses that shift by whole nanometres: half a one is rounded to the right, in a mirror too. */
function evenly(sketch: Sketch): Sketch {
  const isEven = ({ lay: { bond, joint } }: WallSketch): boolean =>
    bond === "stack" || (sketch.tile.across + (joint as Nm)) % bond.q === 0;
  const even = (wall: WallSketch): WallSketch =>
    isEven(wall) ? wall : { ...wall, lay: { ...wall.lay, bond: { p: 1, q: 2 } } };
  return { ...sketch, walls: sketch.walls.map(even) };
}

/** What was told, apart from left and right. */
/** Of a mitred corner the wall at its right is told, which is the other one in a mirror: both are named. */
function summaryOf(solved: SolvedPlan): string[] {
  const mitred = solved.walls
    .map(({ wall }) => wall)
    .filter(({ edges }) =>
      [edges.left, edges.right].some(
        ({ meets }) => meets.kind === "outside" && meets.lap === "mitre",
      ),
    )
    .map(({ name }) => name);
  const place = (code: string, wall = "") =>
    code.startsWith("corner/") && mitred.includes(wall) ? mitred.join(" and ") : wall;
  return check(solved)
    .map(
      ({ code, severity, wall, pieces }) =>
        `${code} ${severity} ${place(code, wall)} ${pieces?.length ?? 0}`,
    )
    .sort();
}

function idsOf({ walls }: SolvedPlan): string[] {
  return walls.flatMap(({ lays }) =>
    lays.flatMap((lay) => Array.from({ length: lay.pieces.count }, (_, i) => pieceId(lay, i))),
  );
}

/** Looked at piece by piece, by what the solver says is seen of each. */
function sliversOf({ walls }: SolvedPlan): string[] {
  return walls
    .flatMap(({ lays }) =>
      lays.flatMap((lay) => {
        const {
          lattice: { face },
          pieces,
        } = lay;
        return Array.from({ length: pieces.count }, (_, i) => {
          const seen = visibleBounds(pieces, i);
          if (!seen) return [];
          const [width, height] = [seen.right - seen.left, seen.top - seen.bottom];
          const isNarrow = width < face.across && width < sliverLimit(face.across, {});
          const isLow = height < face.up && height < sliverLimit(face.up, {});
          return isNarrow || isLow ? [pieceId(lay, i)] : [];
        }).flat();
      }),
    )
    .sort();
}
