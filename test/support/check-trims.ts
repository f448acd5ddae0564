import assert from "node:assert/strict";
import {
  boundsOf,
  doubleShapeArea,
  overlaps,
  pieceBounds,
  pieceShape,
  type Shape,
  type SolvedWall,
} from "../../src/solver/index.js";
import { checkShape, roundingBound } from "./check-shape.js";
import { intersect, ringsOf } from "./clipping.js";
import { isRectilinear } from "./ring.js";

/** Pieces of trim are well formed, overlap no other, and keep clear of the tile. */
export function checkTrims({ wall, trims, lays }: SolvedWall): void {
  const shapes = trims.flatMap((run) => run.pieces.map(({ shape }) => shape));
  shapes.forEach((shape, i) => {
    const name = `${wall.name}: trim ${i}`;
    checkShape(name, boundsOf(shape.outline), shape);
    shapes.slice(i + 1).forEach((other) => checkApart(name, shape, other));
    for (const { pieces } of lays) {
      const trim = boundsOf(shape.outline);
      for (let k = 0; k < pieces.count; k++) {
        if (!overlaps(trim, pieceBounds(pieces, k))) continue;
        checkApart(`${name} and piece ${k}`, shape, pieceShape(pieces, k));
      }
    }
  });
}

/** Shapes share nothing: exactly where both are square, but for the rounding of slopes elsewhere. */
function checkApart(name: string, shape: Shape, other: Shape): void {
  if (!overlaps(boundsOf(shape.outline), boundsOf(other.outline))) return;
  const shared = intersect(ringsOf(shape), ringsOf(other));
  const area = shared.reduce((sum, part) => sum + Number(doubleShapeArea(part)) / 2, 0);
  const isSquare = isRectilinear(shape.outline) && isRectilinear(other.outline);
  const bound = isSquare ? 0 : roundingBound(shape) + roundingBound(other);
  assert.ok(area <= bound, `${name} overlap by ${area} nm2, ${bound} allowed`);
}
