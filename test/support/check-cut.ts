import assert from "node:assert/strict";
import {
  cutOf,
  pieceShape,
  type Box,
  type Cut,
  type Shape,
  type SolvedLay,
} from "../../src/solver/index.js";
import { isOnHole } from "./circle.js";
import { ringsOf } from "./clipping.js";
import type { ReferenceWall } from "./reference-wall.js";
import { cornersOf, isRectilinear } from "./ring.js";

/** The kind of cut that a piece is said to have is the one its shape shows. */
export function checkCut(
  name: string,
  { pieces }: SolvedLay,
  reference: ReferenceWall,
  i: number,
  tile: Box,
): void {
  const cut = kindOf(pieceShape(pieces, i), reference, tile);
  assert.equal(cutOf(pieces, i), cut, `${name}: its cut`);
}

function kindOf(shape: Shape, reference: ReferenceWall, tile: Box): Cut {
  if (shape.holes.length > 0 || isBitten(shape, reference)) return "hole";
  if (!isRectilinear(shape.outline)) return "scribe";
  const corners = shape.outline.length / 2;
  if (corners > 4) return corners === 6 ? "notch" : "slot";
  const [left, bottom, right, , , top] = shape.outline;
  const isNarrower = right! - left! < tile.right - tile.left;
  const isLower = top! - bottom! < tile.top - tile.bottom;
  if (isNarrower) return isLower ? "corner" : "end";
  return isLower ? "rip" : "none";
}

/** Whether a round hole made one of the sides. */
function isBitten(shape: Shape, { circles }: ReferenceWall): boolean {
  return circles.some((circle) =>
    ringsOf(shape).some((ring) => {
      const corners = cornersOf(ring);
      return corners.some((a, i) => isOnHole(circle, a, corners[(i + 1) % corners.length]!));
    }),
  );
}
