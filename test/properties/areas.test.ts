import assert from "node:assert/strict";
import {
  doublePieceArea,
  doubleShapeArea,
  visibleShapes,
  type Box,
  type SolvedLay,
} from "../../src/solver/index.js";
import { areaWithout, within } from "../support/box-area.js";
import { printSketch } from "../support/print-sketch.js";
import { randomSketch, SQUARE } from "../support/random-sketch.js";
import { tileAt, tileNumberAt } from "../support/reference-lattice.js";
import { referenceWall, type ReferenceWall, type SideLine } from "../support/reference-wall.js";
import { solveClean } from "../support/solve-text.js";

const PLANS = 200;

describe(`what covers ${PLANS} random walls with straight sides, to the square nanometre`, () => {
  it("pieces + joints + openings + soft strips = the bare wall, and what runs on past it round outside corners", () => {
    let outside = 0;
    for (const { laid, reference, size, told } of laidWalls()) {
      const wall: Box = { left: 0, bottom: 0, right: size.across, top: size.up };
      const region = regionBox(reference);
      const past = areaWithout(region, [wall]);
      if (past > 0n) outside++;
      const strips = areaWithout(wall, [region]) - past;
      const sum =
        pieceArea(laid) +
        jointArea(laid, reference, region) +
        takenArea(reference, region) +
        strips;
      assert.equal(sum, areaWithout(wall, []), told);
    }
    assert.ok(outside > PLANS / 20, `${outside} walls that run on past their end`);
  });

  it("pieces seen + joints + openings = the region, less the strips that are hidden", () => {
    let hidden = 0;
    for (const { laid, reference, told } of laidWalls()) {
      const shown = shownBox(reference);
      if (reference.hidden.length > 0) hidden++;
      const sum = seenArea(laid) + jointArea(laid, reference, shown) + takenArea(reference, shown);
      assert.equal(sum, areaWithout(shown, []), told);
    }
    assert.ok(hidden > PLANS / 10, `${hidden} walls with a hidden strip`);
  });
});

function* laidWalls() {
  for (let seed = 0; seed < PLANS; seed++) {
    const text = printSketch(randomSketch(seed, SQUARE), "mm");
    const { plan, solved } = solveClean(text);
    for (const { wall, lays } of solved.walls) {
      for (const laid of lays) {
        const reference = referenceWall(plan, wall, laid.joint);
        const told = `seed ${seed}, ${wall.name}\n${text}`;
        yield { laid, reference, size: wall.size, told };
      }
    }
  }
}

function pieceArea({ pieces }: SolvedLay): bigint {
  let sum = 0n;
  for (let i = 0; i < pieces.count; i++) sum += doublePieceArea(pieces, i);
  return sum / 2n;
}

function seenArea({ pieces }: SolvedLay): bigint {
  let sum = 0n;
  for (let i = 0; i < pieces.count; i++) {
    for (const shape of visibleShapes(pieces, i)) sum += doubleShapeArea(shape);
  }
  return sum / 2n;
}

function takenArea({ openings }: ReferenceWall, zone: Box): bigint {
  return areaWithout(zone, []) - areaWithout(zone, openings);
}

/** The bed joints and head joints of the lattice within a zone, less what the openings take. */
function jointArea(laid: SolvedLay, { openings }: ReferenceWall, zone: Box): bigint {
  let sum = 0n;
  for (let n = 0; n <= laid.courses.length; n++) {
    const course = tileAt(laid, Math.max(n, 1), 0);
    const height = course.top - course.bottom;
    const bottom = n === 0 ? course.bottom - laid.joint - height : course.bottom;
    const bed = { ...zone, bottom: bottom + height, top: bottom + height + laid.joint };
    sum += areaWithout(within(bed, zone), openings);
    if (n > 0) sum += headJointArea(laid, openings, zone, n);
  }
  return sum;
}

function headJointArea(
  laid: SolvedLay,
  openings: readonly Box[],
  zone: Box,
  course: number,
): bigint {
  let sum = 0n;
  const last = tileNumberAt(laid, course, zone.right);
  for (let k = tileNumberAt(laid, course, zone.left); k <= last; k++) {
    const tile = tileAt(laid, course, k);
    const head = { ...tile, left: tile.right, right: tileAt(laid, course, k + 1).left };
    sum += areaWithout(within(head, zone), openings);
  }
  return sum;
}

function regionBox({ sides }: ReferenceWall): Box {
  const value = (side: SideLine["side"]) => sides.find((line) => line.side === side)!.points[0]![1];
  return {
    left: value("left"),
    bottom: value("bottom"),
    right: value("right"),
    top: value("top"),
  };
}

function shownBox(reference: ReferenceWall): Box {
  const region = regionBox(reference);
  return reference.hidden.reduce((box, { side, points }) => {
    const value = points[0]![1];
    return side === "left"
      ? { ...box, left: Math.max(box.left, value) }
      : { ...box, right: Math.min(box.right, value) };
  }, region);
}
