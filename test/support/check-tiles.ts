import assert from "node:assert/strict";
import type { Side } from "../../src/model/index.js";
import {
  type Box,
  doublePieceArea,
  overlaps,
  type SolvedPlan,
  surfacesOf,
} from "../../src/solver/index.js";
import {
  allCuts,
  type CutPiece,
  type CutTile,
  type PlacedPiece,
  type Takeoff,
  type TileTakeoff,
} from "../../src/takeoff/index.js";
import { checkGuillotine } from "./check-guillotine.js";

/** The sides in the order of quarter turns anticlockwise. */
const ROUND: readonly Side[] = ["bottom", "right", "top", "left"];

/** Checks that every cut piece comes from a tile, once, and that the tiles' areas come out. */
export function checkTiles(solved: SolvedPlan, taken: Takeoff, told: string): void {
  const cut = allCuts(taken.walls).flatMap(({ pieces }) => pieces);
  const labels = new Map(cut.map((piece) => [piece.label, piece]));
  assert.equal(labels.size, cut.length, `every label is its own, ${told}`);
  const placed = taken.tiles.flatMap(({ cut: tiles }) => tiles.flatMap(({ pieces }) => pieces));
  assert.deepEqual(placed.map(({ label }) => label).sort(), [...labels.keys()].sort(), told);
  for (const tile of taken.tiles) {
    assert.equal(tile.needed, tile.whole + tile.cut.length, told);
    assert.ok(tile.cutBound <= tile.cut.length, `${tile.cutBound} at least, ${told}`);
    const kerf = tile.cut.reduce((sum, one) => {
      return sum + checkTile(one, tile, labels, taken.saw.kerf, told);
    }, 0n);
    assert.equal(tile.doubleArea.kerf, kerf, `what no piece and no offcut covers, ${told}`);
    checkAreas(solved, tile, told);
  }
}

/** Checks one tile; returns twice the area of its face that is neither piece nor offcut. */
function checkTile(
  { pieces, offcuts }: CutTile,
  { tile }: TileTakeoff,
  labels: ReadonlyMap<string, CutPiece>,
  kerf: number,
  told: string,
): bigint {
  const face: Box = { left: 0, bottom: 0, right: tile.face.across, top: tile.face.up };
  for (const placed of pieces) {
    const piece = labels.get(placed.label)!;
    assert.equal(piece.tile, tile, told);
    checkPlaced(placed, piece, face, told);
  }
  const boxes = [...pieces.map(({ box }) => box), ...offcuts];
  boxes.forEach((box, k) => {
    assert.ok(box.left >= 0 && box.bottom >= 0, told);
    assert.ok(box.right <= face.right && box.top <= face.top, `cut from nothing, ${told}`);
    assert.ok(!boxes.slice(0, k).some((other) => overlaps(other, box)), `overlap, ${told}`);
  });
  checkGuillotine(boxes, kerf, told);
  return boxes.reduce((left, box) => left - doubleBoxArea(box), doubleBoxArea(face));
}

/** Its size as it was turned, and the edges that it needs on the tile's. */
function checkPlaced({ box, turns }: PlacedPiece, piece: CutPiece, face: Box, told: string): void {
  const { left, bottom, right, top } = piece.cut.box;
  const [width, height] = [right - left, top - bottom];
  const size = turns % 2 === 0 ? [width, height] : [height, width];
  assert.deepEqual([box.right - box.left, box.top - box.bottom], size, told);
  if (piece.tile.directional) assert.equal(turns, 0, `a directional tile isn't turned, ${told}`);
  for (const side of piece.factory) {
    const lies = ROUND[(ROUND.indexOf(side) + turns) % 4]!;
    assert.equal(box[lies], face[lies], `${piece.label} keeps its ${side} edge, ${told}`);
  }
}

/** set + offcuts + kerf + what is cut out of pieces = the faces of the tiles that are needed. */
function checkAreas(
  { walls }: SolvedPlan,
  { tile, needed, doubleArea }: TileTakeoff,
  told: string,
) {
  let set = 0n;
  for (const { lay, pieces } of surfacesOf(walls).flatMap(({ lays }) => lays)) {
    if (lay.tile !== tile) continue;
    for (let i = 0; i < pieces.count; i++) set += doublePieceArea(pieces, i);
  }
  assert.equal(doubleArea.set, set, told);
  assert.ok(doubleArea.cutOut >= 0n, told);
  const { offcuts, kerf, cutOut } = doubleArea;
  const faces = BigInt(needed) * 2n * BigInt(tile.face.across) * BigInt(tile.face.up);
  assert.equal(set + offcuts + kerf + cutOut, faces, told);
}

function doubleBoxArea({ left, bottom, right, top }: Box): bigint {
  return 2n * BigInt(right - left) * BigInt(top - bottom);
}
