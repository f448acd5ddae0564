import assert from "node:assert/strict";
import type { Plan, Wall } from "../../src/model/index.js";
import { doubleRegionArea } from "../../src/solver/region-area.js";
import { solveWall } from "../../src/solver/solve-wall.js";
import {
  doublePieceArea,
  overlaps,
  pieceBounds,
  pieceId,
  pieceShape,
  type Box,
  type SolvedLay,
  type SolvedWall,
} from "../../src/solver/index.js";
import { areaWithout, within } from "../support/box-area.js";
import { intersect, ringsOf } from "../support/clipping.js";
import {
  type Kind,
  type Lays,
  mirroredLays,
  type Part,
  randomLays,
} from "../support/random-lays.js";
import { randomFrom } from "../support/random.js";
import { tileAt, tileNumberAt } from "../support/reference-lattice.js";

const WALLS = 60;
const STRAIGHT: Kind = { measured: false, openings: true, running: true };

describe(`${WALLS} random walls of several lays`, () => {
  it("have each lay where the plan says, to the nanometre", () => {
    for (const { sketch, laid, told } of laidWalls(STRAIGHT)) {
      for (const { part, own } of partsOf(sketch, laid)) {
        const area = areaWithout(part.box, [...sketch.openings, ...part.patches]);
        assert.equal(doubleRegionArea(own.region), 2n * area, `${told}, ${part.lay.name}`);
        assert.deepEqual(own.region.bounds, part.box, `${told}, ${part.lay.name}`);
      }
    }
  });

  it("come to the wall's region: what the lays have, and what is between them", () => {
    for (const { sketch, laid, told } of laidWalls(STRAIGHT)) {
      const lays = laid.lays.reduce((sum, { region }) => sum + doubleRegionArea(region), 0n);
      const between = sketch.between.reduce(
        (sum, { box, without }) =>
          sum + areaWithout(within(box, sketch.region), [...sketch.openings, ...without]),
        0n,
      );
      assert.ok(between > 0n, told);
      assert.equal(lays + 2n * between, doubleRegionArea(laid.region), told);
    }
  });

  it("have all of each lay's tile within what it has, and none beyond", () => {
    for (const { sketch, laid, told } of laidWalls(STRAIGHT)) {
      for (const { part, own } of partsOf(sketch, laid)) {
        assert.equal(
          pieceArea(own),
          tileArea(own, part, sketch.openings),
          `${told}, ${part.lay.name}`,
        );
      }
    }
  });

  it("have no two pieces over each other, and each id once", () => {
    checkApart(STRAIGHT);
  });

  it("have none over each other either where sides are out of level and plumb", () => {
    checkApart({ ...STRAIGHT, measured: true });
  });

  it("have mirrored pieces in their mirror images", () => {
    for (const { sketch, laid, told } of laidWalls({ ...STRAIGHT, running: false })) {
      const { plan, wall } = mirroredLays(sketch);
      const mirror = solved(plan, wall);
      const { across } = wall.size;
      assert.deepEqual(
        boxesOf(mirror),
        boxesOf(laid, (box) => turned(box, across)),
        told,
      );
    }
  });
});

function* laidWalls(kind: Kind) {
  for (let seed = 0; seed < WALLS; seed++) {
    const sketch = randomLays(randomFrom(seed), kind);
    const laid = solved(sketch.plan, sketch.wall);
    const told = `seed ${seed}: ${sketch.parts.map(({ lay }) => lay.name).join()}`;
    yield { sketch, laid, told };
  }
}

function solved(plan: Plan, wall: Wall): SolvedWall {
  return solveWall(plan, wall, new Map());
}

function partsOf({ parts }: Lays, { lays }: SolvedWall): { part: Part; own: SolvedLay }[] {
  assert.equal(lays.length, parts.length);
  return parts.map((part) => ({ part, own: lays.find(({ lay }) => lay === part.lay)! }));
}

function pieceArea({ pieces }: SolvedLay): bigint {
  let sum = 0n;
  for (let i = 0; i < pieces.count; i++) sum += doublePieceArea(pieces, i);
  return sum / 2n;
}

/** The area of all tiles of the lay's lattice within what it has. */
function tileArea(own: SolvedLay, { box, patches }: Part, openings: readonly Box[]): bigint {
  const { lattice } = own;
  const module = lattice.face.up + lattice.joint;
  const row = (height: number) => Math.floor((height - lattice.y) / module);
  let sum = 0n;
  for (let n = row(box.bottom); n <= row(box.top); n++) {
    // The bond comes round after `q` courses, downwards too.
    const alike = (((n % lattice.q) + lattice.q) % lattice.q) + 1;
    const bottom = lattice.y + n * module;
    const last = tileNumberAt(own, alike, box.right);
    for (let k = tileNumberAt(own, alike, box.left); k <= last; k++) {
      const { left, right } = tileAt(own, alike, k);
      const tile = { left, right, bottom, top: bottom + lattice.face.up };
      sum += areaWithout(within(tile, box), [...openings, ...patches]);
    }
  }
  return sum;
}

function checkApart(kind: Kind): void {
  let near = 0;
  for (const { laid, told } of laidWalls(kind)) {
    const pieces = laid.lays.flatMap((own) =>
      Array.from({ length: own.pieces.count }, (_, i) => ({
        own,
        id: pieceId(own, i),
        box: pieceBounds(own.pieces, i),
        rings: ringsOf(pieceShape(own.pieces, i)),
      })),
    );
    assert.equal(new Set(pieces.map(({ id }) => id)).size, pieces.length, told);
    pieces.forEach((a, i) => {
      for (const b of pieces.slice(i + 1)) {
        if (!overlaps(a.box, b.box)) continue;
        if (a.own !== b.own) near++;
        assert.deepEqual(intersect(a.rings, b.rings), [], `${told}: ${a.id} and ${b.id}`);
      }
    });
  }
  assert.ok(near > 0, "some pieces are cut round another lay's");
}

function boxesOf({ lays }: SolvedWall, turn = (box: Box): Box => box): number[][] {
  return lays
    .flatMap(({ pieces }) =>
      Array.from({ length: pieces.count }, (_, i) => turn(pieceBounds(pieces, i))),
    )
    .map(({ left, bottom, right, top }) => [left, bottom, right, top])
    .sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]! || a[3]! - b[3]!);
}

function turned(box: Box, width: number): Box {
  return { ...box, left: width - box.right, right: width - box.left };
}
