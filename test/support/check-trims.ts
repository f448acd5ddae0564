import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import type { Opening } from "../../src/model/index.js";
import {
  boundsOf,
  doubleShapeArea,
  overlaps,
  pieceBounds,
  pieceShape,
  ringOf,
  type Box,
  type Shape,
  type SolvedWall,
} from "../../src/solver/index.js";
import { checkShape, roundingBound } from "./check-shape.js";
import { intersect, ringsOf } from "./clipping.js";
import { isRectilinear } from "./ring.js";

/** Past any wall of the tests: 1 km. */
const FAR: Nm = 1_000_000_000_000;

/**
 * Pieces of trim are well formed, overlap no other, and keep clear of the tile and of what an outline leaves out;
 * those along edges keep clear of openings, too.
 */
export function checkTrims({ wall, trims, lays }: SolvedWall): void {
  for (const { along, pieces } of trims) {
    const apart = [...wall.steps, ...("edge" in along ? wall.openings.map(solidBox) : [])];
    for (const { shape } of pieces) {
      apart.forEach((box, i) =>
        checkApart(`${wall.name}: trim in step or opening ${i}`, shape, {
          outline: ringOf(box),
          holes: [],
        }),
      );
    }
  }
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

/** An opening with its frame, to the floor or the ceiling where it goes on so far. */
function solidBox({ at, size, frame, reaches }: Opening): Box {
  const by = frame ? frame.trim.face.across - frame.inset : 0;
  return {
    left: at.x - by,
    bottom: reaches === "floor" ? -FAR : at.y - by,
    right: at.x + size.across + by,
    top: reaches === "ceiling" ? FAR : at.y + size.up + by,
  };
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
