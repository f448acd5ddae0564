import assert from "node:assert/strict";
import {
  boundsOf,
  doubleArea,
  doubleShapeArea,
  pieceShape,
  visibleShapes,
  type Box,
  type Ring,
  type Shape,
  type SolvedLay,
} from "../../src/solver/index.js";
import { ringsOf, subtract } from "./clipping.js";
import { hiddenRings, isSquare, type ReferenceWall } from "./reference-wall.js";
import { cornerCount, cornersOf, fromLowest, isRectilinear, perimeter } from "./ring.js";

/** A piece's rings are written as promised, and its bounds fit them. */
export function checkShape(name: string, bounds: Box, shape: Shape): void {
  assert.deepEqual(boundsOf(shape.outline), bounds, `${name}: bounds fit the outline`);
  assert.ok(doubleArea(shape.outline) > 0n, `${name}: the outline runs anticlockwise`);
  for (const hole of shape.holes) {
    assert.ok(doubleArea(hole) < 0n, `${name}: its holes run clockwise`);
    const { left, bottom, right, top } = boundsOf(hole);
    const isInside =
      left > bounds.left && bottom > bounds.bottom && right < bounds.right && top < bounds.top;
    assert.ok(isInside, `${name}: its holes lie inside`);
  }
  assert.ok(doubleShapeArea(shape) > 0n, `${name} has an area`);
  for (const ring of ringsOf(shape)) checkRing(name, ring);
}

function checkRing(name: string, ring: Ring): void {
  assert.ok(ring.every(Number.isSafeInteger), `${name}: corners on whole nanometres`);
  assert.deepEqual(fromLowest(ring), ring, `${name}: from the lowest, then leftmost corner`);
  const corners = cornersOf(ring);
  const n = corners.length;
  assert.ok(n >= 3, `${name}: three corners or more`);
  corners.forEach((corner, i) => {
    const turn = turnOf(corners[(i + n - 1) % n]!, corner, corners[(i + 1) % n]!);
    assert.notEqual(turn, 0, `${name}: no point on a straight run`);
  });
  if (!isRectilinear(ring)) assert.ok(isSimple(corners), `${name}: sides don't cross`);
}

function isSimple(corners: readonly (readonly [number, number])[]): boolean {
  const n = corners.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b] = [corners[i]!, corners[i + 1]!];
      const [c, d] = [corners[j]!, corners[(j + 1) % n]!];
      if (turnOf(a, b, c) * turnOf(a, b, d) < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0) {
        return false;
      }
    }
  }
  return true;
}

type Point = readonly [number, number];

/** The sign of the turn at b on the way from a to c; exact. */
function turnOf([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  const turn = BigInt(bx - ax) * BigInt(cy - by) - BigInt(by - ay) * BigInt(cx - bx);
  return turn > 0n ? 1 : turn < 0n ? -1 : 0;
}

/**
 * What is seen of a piece is the piece less what other walls' tile hides: exactly where the sides are
 * straight and square, within the rounding of the crossings (see `roundingBound`) elsewhere.
 */
export function checkVisible(
  name: string,
  { pieces }: SolvedLay,
  reference: ReferenceWall,
  i: number,
): void {
  const shape = pieceShape(pieces, i);
  const seen = visibleShapes(pieces, i);
  if (reference.hidden.length === 0) {
    assert.ok(!pieces.visible.has(i), `${name} is seen whole: nothing covers this wall`);
    return;
  }
  for (const part of seen) {
    for (const ring of ringsOf(part)) checkRing(`${name} (seen)`, ring);
    assert.ok(doubleArea(part.outline) > 0n, `${name}: what is seen runs anticlockwise`);
  }
  const expected = subtract(ringsOf(shape), hiddenRings(reference));
  const isExact = reference.hidden.every(isSquare) && ringsOf(shape).every(isRectilinear);
  if (isExact) assert.deepEqual(seen, expected, `${name}: what is seen`);
  const difference = 2 * Number(totalArea(seen) - totalArea(expected));
  const bound = [...seen, ...expected].reduce((sum, part) => sum + roundingBound(part), 0);
  assert.ok(Math.abs(difference) <= 4 * bound, `${name}: how much is seen`);
}

function totalArea(shapes: readonly Shape[]): bigint {
  return shapes.reduce((sum, shape) => sum + doubleShapeArea(shape), 0n);
}

/**
 * How far rounding its corners can change a shape's area, in square nanometres. Moving corner i by
 * at most half a nanometre each way changes twice the area by cross(d_i, v_(i+1) - v_(i-1)) summed
 * over the corners, at most half the extents of the two sides there each, so P in all; and by
 * cross(d_i, d_(i+1)), at most 1/2 a corner. P is the sum of the sides' extents across and up.
 */
export function roundingBound(shape: Shape): number {
  return perimeter(shape) / 2 + cornerCount(shape) / 4;
}
