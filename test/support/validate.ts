import assert from "node:assert/strict";
import {
  cutOf,
  overlaps,
  pieceBounds,
  pieceId,
  pieceShape,
  type Box,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../../src/solver/index.js";
import { checkCut } from "./check-cut.js";
import { checkInRegion, isClearOf } from "./check-region.js";
import { boxRound } from "./circle.js";
import { checkShape, checkVisible } from "./check-shape.js";
import { checkTrims } from "./check-trims.js";
import { intersect, ringsOf } from "./clipping.js";
import { referenceWall, type ReferenceWall } from "./reference-wall.js";
import { tileAt, tileNumberAt } from "./reference-lattice.js";

/** Checks all laws of a solved plan; throws on the first that is broken. */
export function validate(solved: SolvedPlan): void {
  assert.deepEqual(
    solved.walls.map(({ wall }) => wall.name),
    solved.plan.walls.map(({ name }) => name),
    "a solved wall for each wall, in their order",
  );
  for (const wall of solved.walls) {
    checkTrims(wall);
    for (const laid of wall.lays) validateLay(solved, wall, laid);
  }
}

function validateLay(solved: SolvedPlan, wall: SolvedWall, laid: SolvedLay): void {
  const reference = referenceWall(solved.plan, wall.wall, laid.joint);
  checkTable(wall, laid);
  checkIds(laid);
  const { pieces } = laid;
  let tileMates: number[] = [];
  for (let i = 0; i < pieces.count; i++) {
    validatePiece(laid, reference, i);
    tileMates = isTileMate(laid, i) ? [...tileMates, i] : [i];
    for (const mate of tileMates.slice(0, -1)) checkApart(laid, mate, i);
  }
}

function validatePiece(laid: SolvedLay, reference: ReferenceWall, i: number): void {
  const { pieces } = laid;
  const bounds = pieceBounds(pieces, i);
  const course = pieces.course[i]!;
  const tile = tileAt(laid, course, tileNumberAt(laid, course, bounds.left));
  // Most pieces are whole tiles that nothing touches, and told at once.
  if (!pieces.shapes.has(i) && !pieces.visible.has(i) && isPlainlyWhole(laid, reference, i, tile)) {
    return;
  }
  const name = pieceId(laid, i);
  assert.ok(isWithin(bounds, tile), `${name} lies in its tile`);
  checkShape(name, bounds, pieceShape(pieces, i));
  checkVisible(name, laid, reference, i);
  checkInRegion(name, pieceShape(pieces, i), reference);
  checkCut(name, laid, reference, i, tile);
}

function isPlainlyWhole(
  { pieces }: SolvedLay,
  { sides, hidden, openings, circles }: ReferenceWall,
  i: number,
  tile: Box,
): boolean {
  const { left, bottom, right, top } = pieceBounds(pieces, i);
  return (
    cutOf(pieces, i) === "none" &&
    left === tile.left &&
    bottom === tile.bottom &&
    right === tile.right &&
    top === tile.top &&
    Number.isSafeInteger(left + bottom) &&
    sides.every((line) => isClearOf(tile, line)) &&
    hidden.every((line) => isClearOf(tile, line)) &&
    !openings.some((box) => overlaps(tile, box)) &&
    !circles.some((circle) => overlaps(tile, boxRound(circle)))
  );
}

/** The columns of the table agree with each other and with the courses. */
function checkTable(wall: SolvedWall, laid: SolvedLay): void {
  const { pieces, courses, lattice, joint, stand } = laid;
  const bed = stand ? stand.bed : joint;
  const { count, courseStart } = pieces;
  const where = wall.wall.name;
  assert.equal(pieces.bounds.length, 4 * count, `${where}: four bounds a piece`);
  for (const column of [pieces.course, pieces.column, pieces.part, pieces.cut]) {
    assert.equal(column.length, count, `${where}: every column as long as the table`);
  }
  assert.equal(lattice.joint, joint);
  assert.equal(courseStart.length, courses.length + 1, `${where}: a start for each course`);
  assert.equal(courseStart.at(-1), count, `${where}: the last start is the count`);
  courses.forEach((course, n) => {
    assert.equal(course.number, n + 1, `${where}: courses are numbered from 1`);
    assert.equal(course.bottom, lattice.y + n * (lattice.face.up + bed));
    assert.equal(course.top, course.bottom + lattice.face.up);
    assert.ok(courseStart[n]! <= courseStart[n + 1]!, `${where}: starts rise`);
    for (let i = courseStart[n]!; i < courseStart[n + 1]!; i++) {
      if (pieces.course[i] !== n + 1) assert.fail(`${where}: piece ${i} stands in its course`);
    }
  });
  if (count > 0) assert.equal(pieces.course[0], 1, `${where}: course 1 has a piece`);
  for (const index of [...pieces.shapes.keys(), ...pieces.visible.keys()]) {
    assert.ok(index >= 0 && index < count, `${where}: shapes belong to pieces`);
  }
}

/** Ids are unique, and pieces run from left to right: each tile is one column, its parts in order. */
function checkIds(laid: SolvedLay): void {
  const { pieces } = laid;
  const ids = new Set<string>();
  for (let i = 0; i < pieces.count; i++) {
    const id = pieceId(laid, i);
    assert.ok(!ids.has(id), `${id} is the id of one piece`);
    ids.add(id);
    assert.ok(pieces.column[i]! >= 1, `${id}: columns count from 1`);
    if (i === 0 || pieces.course[i] !== pieces.course[i - 1]) {
      assert.equal(pieces.part[i], 0, `${id}: a course begins with a tile's first part`);
      continue;
    }
    const [k, before] = [i, i - 1].map((n) => {
      return tileNumberAt(laid, pieces.course[n]!, pieces.bounds[4 * n]!);
    });
    const step = pieces.column[i]! - pieces.column[i - 1]!;
    assert.equal(step, k! - before!, `${id}: columns count tiles`);
    assert.ok(step >= 0, `${id}: from left to right`);
    assert.equal(pieces.part[i], step > 0 ? 0 : pieces.part[i - 1]! + 1, `${id}: parts in order`);
  }
}

function isTileMate({ pieces }: SolvedLay, i: number): boolean {
  return (
    i > 0 && pieces.course[i] === pieces.course[i - 1] && pieces.column[i] === pieces.column[i - 1]
  );
}

/** Tiles don't overlap, so only the parts of one tile could. */
function checkApart(laid: SolvedLay, i: number, j: number): void {
  const { pieces } = laid;
  const shared = intersect(ringsOf(pieceShape(pieces, i)), ringsOf(pieceShape(pieces, j)));
  const [a, b] = [i, j].map((n) => pieceId(laid, n));
  assert.deepEqual(shared, [], `${a!} and ${b!} don't overlap`);
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.bottom >= outer.bottom &&
    inner.right <= outer.right &&
    inner.top <= outer.top
  );
}
