import type { Nm } from "../../measure/index.js";
import { type Box, overlaps } from "../box.js";
import { rangeBetween } from "../chain.js";
import { classify } from "../classify.js";
import { circleMeets } from "../clip/circle.js";
import { cutTile } from "../cut-tile.js";
import { FAULT, judgePiece } from "../judge.js";
import { CUTS } from "../piece-table.js";
import { type Field, isFlat, type Reach } from "./field.js";

/** Counts over the pieces looked at so far. */
export interface Tally {
  slivers: number;
  underHalf: number;
  cuts: number;
  tiles: number;
}

/** Like tiles: the lower left corner of one of them, and how many there are. */
export interface Cells {
  left: Nm;
  bottom: Nm;
  many: number;
}

const SLIVER = FAULT.widthSliver | FAULT.heightSliver;
const UNDER_HALF = FAULT.widthUnderHalf | FAULT.heightUnderHalf;

/** How often a cut counts: a piece with a corner, a side or a hole taken out is two cuts' work. */
const WEIGHTS: readonly number[] = CUTS.map((cut) => {
  if (cut === "none") return 0;
  return cut === "notch" || cut === "slot" || cut === "hole" ? 2 : 1;
});

/** How often the cut with this index in CUTS counts. */
export function cutWeight(cut: number): number {
  return WEIGHTS[cut]!;
}

/** Adds a piece's faults, as `judgePiece` gives them, and the weight of its cut, `many` times. */
export function addPiece(tally: Tally, faults: number, weight: number, many: number): void {
  if (faults & SLIVER) tally.slivers += many;
  if (faults & UNDER_HALF) tally.underHalf += many;
  tally.cuts += weight * many;
}

/**
 * Adds the pieces of like tiles as far as plain comparison tells them: a side that is straight or
 * slopes right through, at most one opening, a hole that lies within. false when it takes more;
 * then nothing is added and `addCutCells` must be asked.
 */
export function addCells(field: Field, cells: Cells, tally: Tally): boolean {
  const { across, up, judge } = field;
  const { left, bottom, many } = cells;
  const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
  const box = { ...tile };
  const scribed = trimToSides(field, box);
  if (scribed === null) return false;
  if (box.left >= box.right || box.bottom >= box.top) return true;
  let met: Box | null = null;
  for (const other of field.boxes) {
    if (!overlaps(box, other)) continue;
    if (met) return false;
    met = other;
  }
  let holed = false;
  for (const circle of field.circles) {
    if (!overlaps(box, circle) || !circleMeets(circle, box)) continue;
    if (met || scribed || !isWithin(circle, box)) return false;
    holed = true;
  }
  if (met && scribed) return false;
  if (!met) return add(box, holed ? 2 : scribed ? 1 : -1);
  const spansUp = met.bottom <= box.bottom && met.top >= box.top;
  const spansAcross = met.left <= box.left && met.right >= box.right;
  if (spansUp && spansAcross) return true;
  if (!spansUp && !spansAcross) return add(box, 2);
  if (spansUp) {
    if (met.left > box.left) add({ ...box, right: met.left }, -1);
    if (met.right < box.right) add({ ...box, left: met.right }, -1);
    if (met.left > box.left && met.right < box.right) tally.tiles -= many;
  } else {
    if (met.bottom > box.bottom) add({ ...box, top: met.bottom }, -1);
    if (met.top < box.top) add({ ...box, bottom: met.top }, -1);
    if (met.bottom > box.bottom && met.top < box.top) tally.tiles -= many;
  }
  return true;

  function add(piece: Box, weight: number): true {
    const whole =
      piece.right - piece.left === across.face && piece.top - piece.bottom === up.face ? 0 : 1;
    const faults = judgePiece(judge, piece.left, piece.bottom, piece.right, piece.top, left);
    addPiece(tally, faults, weight < 0 ? whole : weight, many);
    tally.tiles += many;
    return true;
  }
}

/** Adds the pieces of like tiles as they are really cut. */
export function addCutCells(field: Field, cells: Cells, tally: Tally): void {
  const { across, up, judge, region, boxes, circles } = field;
  const { left, bottom, many } = cells;
  const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
  const parts = cutTile(tile, region, { boxes, circles });
  for (const part of parts) {
    const { bounds } = part;
    const faults = judgePiece(judge, bounds.left, bounds.bottom, bounds.right, bounds.top, left);
    addPiece(tally, faults, cutWeight(classify(part, tile)), many);
  }
  if (parts.length > 0) tally.tiles += many;
}

/**
 * Draws the box in to the region's sides. true when a slope cuts it from one upright edge to the
 * other (or from top to bottom), null when that is not all.
 */
function trimToSides(field: Field, box: Mutable): boolean | null {
  const { left, right, bottom, top } = field.sides;
  if (isFlat(left)) box.left = Math.max(box.left, left.low);
  if (isFlat(right)) box.right = Math.min(box.right, right.low);
  if (isFlat(bottom)) box.bottom = Math.max(box.bottom, bottom.low);
  if (isFlat(top)) box.top = Math.min(box.top, top.low);
  if (box.left >= box.right || box.bottom >= box.top) return false;
  const sloping: ("left" | "right" | "bottom" | "top")[] = [];
  if (!isFlat(left) && left.high > box.left) sloping.push("left");
  if (!isFlat(right) && right.low < box.right) sloping.push("right");
  if (!isFlat(bottom) && bottom.high > box.bottom) sloping.push("bottom");
  if (!isFlat(top) && top.low < box.top) sloping.push("top");
  if (sloping.length === 0) return false;
  if (sloping.length > 1) return null;
  return trimToSlope(box, sloping[0]!, field.sides[sloping[0]!]);
}

function trimToSlope(
  box: Mutable,
  side: "left" | "right" | "bottom" | "top",
  { chain }: Reach,
): boolean | null {
  const upright = side === "left" || side === "right";
  const range = upright
    ? rangeBetween(chain, box.bottom, box.top)
    : rangeBetween(chain, box.left, box.right);
  const [low, high] = upright ? [box.left, box.right] : [box.bottom, box.top];
  if (side === "left" || side === "bottom") {
    if (range.high <= low) return false;
    if (range.low < high && range.high >= high && range.low !== range.high) return null;
    box[side] = Math.max(low, range.low);
  } else {
    if (range.low >= high) return false;
    if (range.high > low && range.low <= low && range.low !== range.high) return null;
    box[side] = Math.min(high, range.high);
  }
  return range.low !== range.high;
}

type Mutable = { -readonly [K in keyof Box]: Box[K] };

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left > outer.left &&
    inner.right < outer.right &&
    inner.bottom > outer.bottom &&
    inner.top < outer.top
  );
}
