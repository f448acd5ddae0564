import assert from "node:assert/strict";
import {
  type Box,
  doubleShapeArea,
  overlaps,
  pieceBounds,
  pieceId,
  pieceShape,
  type Ring,
  type Shape,
  type SolvedLay,
  type SolvedWall,
} from "../../src/solver/index.js";
import { roundingBound } from "./check-shape.js";
import { intersect, ringsOf, subtract } from "./clipping.js";
import { isRectilinear } from "./ring.js";

interface Piece {
  readonly id: string;
  readonly box: Box;
  readonly shape: Shape;
}

/**
 * What a wall of several lays, or with an outline, holds beyond the laws of each lay: no piece lies over one of another
 * lay, each id is there once, and none leaves the outline. Exact where sides are square, else but for rounding.
 */
export function checkLays(solved: SolvedWall): void {
  const lays = solved.lays.map(piecesOf);
  const ids = lays.flat().map(({ id }) => id);
  assert.equal(new Set(ids).size, ids.length, `${solved.wall.name}: each id once`);
  lays.forEach((pieces, n) => {
    for (const other of lays.slice(n + 1)) checkApart(pieces, other);
  });
  const { outline } = solved.wall;
  // Round an outside corner tile runs on past the end of the wall.
  const runsOn = Object.values(solved.wall.edges).some(({ meets }) => meets.kind === "outside");
  if (outline && !runsOn)
    checkWithin(
      lays.flat(),
      outline.flatMap(({ x, y }) => [x, y]),
    );
}

function piecesOf(lay: SolvedLay): Piece[] {
  const { pieces } = lay;
  return Array.from({ length: pieces.count }, (_, i) => ({
    id: pieceId(lay, i),
    box: pieceBounds(pieces, i),
    shape: pieceShape(pieces, i),
  }));
}

function checkApart(pieces: readonly Piece[], others: readonly Piece[]): void {
  for (const a of pieces) {
    for (const b of others) {
      if (!overlaps(a.box, b.box)) continue;
      const shared = areaOf(intersect(ringsOf(a.shape), ringsOf(b.shape)));
      const isSquare = isRectilinear(a.shape.outline) && isRectilinear(b.shape.outline);
      const bound = isSquare ? 0 : roundingBound(a.shape) + roundingBound(b.shape);
      assert.ok(shared <= bound, `${a.id} and ${b.id} overlap by ${shared} nm2`);
    }
  }
}

function checkWithin(pieces: readonly Piece[], outline: Ring): void {
  for (const { id, shape } of pieces) {
    const over = areaOf(subtract(ringsOf(shape), [outline]));
    const bound = isRectilinear(shape.outline) ? 0 : roundingBound(shape);
    assert.ok(over <= bound, `${id} leaves the outline by ${over} nm2`);
  }
}

function areaOf(shapes: readonly Shape[]): number {
  return shapes.reduce((sum, each) => sum + Number(doubleShapeArea(each)) / 2, 0);
}
