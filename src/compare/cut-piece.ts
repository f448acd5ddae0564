import type { Side } from "../model/index.js";
import {
  type Box,
  courseBottom,
  cutOf,
  overlaps,
  pieceBounds,
  rangeBetween,
  type Region,
  type Ring,
  type SolvedLay,
  tileLeftOf,
} from "../solver/index.js";
import type { CutPiece } from "./comparison.js";

/** How a piece is cut, its size, and where it stands by what cuts it. */
export function cutPiece(lay: SolvedLay, i: number): CutPiece {
  const box = pieceBounds(lay.pieces, i);
  const cut = cutOf(lay.pieces, i);
  const [width, height] = [box.right - box.left, box.top - box.bottom];
  return {
    cut,
    width: { least: width, most: width },
    height: { least: height, most: height },
    notch: cut === "notch" ? notchOf(lay.pieces.shapes.get(i)!.outline, box) : null,
    place: placeOf(lay, i, box),
  };
}

/** The corner that is missing from an L: from its inner corner to the box's. */
function notchOf(outline: Ring, box: Box): CutPiece["notch"] {
  for (let k = 0; k < outline.length; k += 2) {
    const [x, y] = [outline[k]!, outline[k + 1]!];
    if (x <= box.left || x >= box.right || y <= box.bottom || y >= box.top) continue;
    const has = (cx: number, cy: number) => hasCorner(outline, cx, cy);
    const right = !has(box.right, box.bottom) || !has(box.right, box.top);
    const top = !has(box.left, box.top) || !has(box.right, box.top);
    return {
      across: right ? box.right - x : x - box.left,
      up: top ? box.top - y : y - box.bottom,
    };
  }
  return null;
}

function hasCorner(outline: Ring, x: number, y: number): boolean {
  for (let k = 0; k < outline.length; k += 2) {
    if (outline[k] === x && outline[k + 1] === y) return true;
  }
  return false;
}

const AT_WALL: Readonly<Record<Side, string>> = {
  left: "at the left end",
  right: "at the right end",
  bottom: "along the bottom",
  top: "along the top",
};

/** By the side of the piece that an opening cuts. */
const AT_OPENING: Readonly<Record<Side, string>> = {
  left: "right of",
  right: "left of",
  bottom: "over",
  top: "under",
};

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

function placeOf(lay: SolvedLay, i: number, box: Box): string {
  const { region } = lay;
  const round = [
    ...region.takeaways
      .filter((takeaway) => overlaps(takeaway.box, box))
      .map(({ opening }) => `at a corner of ${opening.kind} ${opening.name}`),
    ...region.roundHoles
      .filter((round) => overlaps(round.box, box))
      .map(({ hole }) => `round hole ${hole.name}`),
  ];
  const slopes = cutOf(lay.pieces, i) === "scribe";
  const cutAt = (side: Side) =>
    isCutAt(lay, i, box, side) || (slopes && isScribedAt(region, box, side));
  const at = SIDES.filter(cutAt).map((side) => {
    const cutter = region.takeaways.find((takeaway) => liesOn(takeaway.box, box, side));
    if (!cutter) return AT_WALL[side];
    return `${AT_OPENING[side]} ${cutter.opening.kind} ${cutter.opening.name}`;
  });
  return [...new Set([...at, ...round])].join(", ") || "in the field";
}

function isCutAt(lay: SolvedLay, i: number, box: Box, side: Side): boolean {
  const course = lay.pieces.course[i]!;
  const left = tileLeftOf(lay.lattice, course, box.left);
  const bottom = courseBottom(lay.lattice, course);
  switch (side) {
    case "left":
      return box.left > left;
    case "right":
      return box.right < left + lay.lattice.face.across;
    case "bottom":
      return box.bottom > bottom;
    case "top":
      return box.top < bottom + lay.lattice.face.up;
  }
}

/** Whether a measured side of the wall runs through the piece. */
function isScribedAt(region: Region, box: Box, side: Side): boolean {
  const upright = side === "left" || side === "right";
  const [from, to] = upright ? [box.bottom, box.top] : [box.left, box.right];
  const { low, high } = rangeBetween(region[side], from, to);
  return side === "left" || side === "bottom" ? high > box[side] : low < box[side];
}

/** Whether an opening's box ends the piece at this side. */
function liesOn(opening: Box, piece: Box, side: Side): boolean {
  const beside = opening.bottom < piece.top && piece.bottom < opening.top;
  const above = opening.left < piece.right && piece.left < opening.right;
  switch (side) {
    case "left":
      return beside && opening.right === piece.left;
    case "right":
      return beside && opening.left === piece.right;
    case "bottom":
      return above && opening.top === piece.bottom;
    case "top":
      return above && opening.bottom === piece.top;
  }
}
