import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { type Box, overlaps } from "../box.js";
import { hasRiser, rangeBetween } from "../chain.js";
import { classify } from "../classify.js";
import { circleMeets } from "../clip/circle.js";
import { cutTile } from "../cut-tile.js";

import { FAULT, judgePiece } from "../judge.js";
import { CUTS } from "../piece-table.js";
import { LOOKS } from "./budget.js";
import type { Effort } from "./effort.js";
import { type Field, isFlat, type Reach } from "./field.js";
import { partsOf } from "./parts.js";

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

/** What a tile that takes real cutting comes to at least. */
export interface Sure {
  readonly slivers: number;
  readonly cuts: number;
}

const NOTHING_SURE: Sure = { slivers: 0, cuts: 0 };
/** A wedge that is judged at its narrow end is a sliver. */
const WEDGE: Sure = { slivers: 1, cuts: 1 };
/** Another wedge is cut at least, and so is a tile that reaches out of a hole's bounds. */
const CUT: Sure = { slivers: 0, cuts: 1 };

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
 * slopes right through, at most one opening, a hole that lies within. null when that was all;
 * otherwise nothing is added, `addCutCells` must be asked, and the answer is what one such tile
 * comes to at least.
 */
export function addCells(field: Field, cells: Cells, tally: Tally): Sure | null {
  const { across, up, judge } = field;
  const { left, bottom, many } = cells;
  const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
  const box = { ...tile };
  const trimmed = trimToSides(field, box);
  if (trimmed === "tangled") return NOTHING_SURE;
  if (box.left >= box.right || box.bottom >= box.top) return null;
  let met: Box | null = null;
  for (const other of field.boxes) {
    if (!overlaps(box, other)) continue;
    if (met || trimmed !== "straight") return NOTHING_SURE;
    met = other;
  }
  let holed = false;
  for (const circle of field.circles) {
    if (!overlaps(box, circle) || !circleMeets(circle, box)) continue;
    if (met || trimmed !== "straight") return NOTHING_SURE;
    if (!isWithin(circle, box)) return isWithin(box, circle) ? NOTHING_SURE : CUT;
    holed = true;
  }
  if (trimmed === "wedge") return isWedgeSliver(field, tile) ? WEDGE : NOTHING_SURE;
  if (trimmed === "outlined wedge") return CUT;
  if (!met) return add(box, holed ? 2 : trimmed === "scribed" ? 1 : -1);
  const spansUp = met.bottom <= box.bottom && met.top >= box.top;
  const spansAcross = met.left <= box.left && met.right >= box.right;
  if (spansUp && spansAcross) return null;
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
  return null;

  function add(piece: Box, weight: number): null {
    const whole =
      piece.right - piece.left === across.face && piece.top - piece.bottom === up.face ? 0 : 1;
    const faults = judgePiece(judge, piece.left, piece.bottom, piece.right, piece.top, left);
    addPiece(tally, faults, weight < 0 ? whole : weight, many);
    tally.tiles += many;
    return null;
  }
}

/** Adds the pieces of like tiles by what is worked out of their parts, without cutting them. */
export function addPartCells(field: Field, cells: Cells, tally: Tally, effort: Effort): void {
  const { across, up, judge } = field;
  const { left, bottom, many } = cells;
  const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
  const parts = partsOf(field, tile, "exact", effort);
  for (const { bounds, cut } of parts) {
    const faults = judgePiece(judge, bounds.left, bounds.bottom, bounds.right, bounds.top, left);
    addPiece(tally, faults, cutWeight(cut), many);
  }
  if (parts.length > 0) tally.tiles += many;
}

/** Adds the pieces of like tiles as they are really cut. */
export function addCutCells(field: Field, cells: Cells, tally: Tally, effort: Effort): void {
  const { across, up, judge, region, boxes, circles } = field;
  const { left, bottom, many } = cells;
  const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
  effort.cells += LOOKS.cut;
  const parts = cutTile(tile, region, { boxes, circles });
  for (const part of parts) {
    const { bounds } = part;
    const faults = judgePiece(judge, bounds.left, bounds.bottom, bounds.right, bounds.top, left);
    addPiece(tally, faults, cutWeight(classify(part, tile)), many);
  }
  if (parts.length > 0) tally.tiles += many;
}

/**
 * How the region's sides cut a box: straight, with a slope from one side to the opposite one, with
 * a slope that leaves a wedge (which is judged by its bounds where the slope is an outline's), or in a way that
 * takes real cutting to tell.
 */
type Trimmed = "straight" | "scribed" | "wedge" | "outlined wedge" | "tangled";

/** Draws the box in to the region's sides. */
function trimToSides(field: Field, box: Mutable): Trimmed {
  const { left, right, bottom, top } = field.sides;
  if (isFlat(left)) box.left = Math.max(box.left, left.low);
  if (isFlat(right)) box.right = Math.min(box.right, right.low);
  if (isFlat(bottom)) box.bottom = Math.max(box.bottom, bottom.low);
  if (isFlat(top)) box.top = Math.min(box.top, top.low);
  if (box.left >= box.right || box.bottom >= box.top) return "straight";
  const sloping: Side[] = [];
  if (!isFlat(left) && left.high > box.left) sloping.push("left");
  if (!isFlat(right) && right.low < box.right) sloping.push("right");
  if (!isFlat(bottom) && bottom.high > box.bottom) sloping.push("bottom");
  if (!isFlat(top) && top.low < box.top) sloping.push("top");
  // A side that slopes elsewhere may run clear of the box.
  const cutting = sloping.length > 1 ? sloping.filter((side) => cuts(field, side, box)) : sloping;
  if (cutting.length === 0) return "straight";
  return cutting.length > 1 ? "tangled" : trimToSlope(box, cutting[0]!, field.sides[cutting[0]!]);
}

function cuts({ region }: Field, side: Side, { left, bottom, right, top }: Box): boolean {
  const isUpright = side === "left" || side === "right";
  const { low, high } = isUpright
    ? rangeBetween(region[side], bottom, top)
    : rangeBetween(region[side], left, right);
  switch (side) {
    case "left":
      return high > left;
    case "right":
      return low < right;
    case "bottom":
      return high > bottom;
    case "top":
      return low < top;
  }
}

function trimToSlope(box: Mutable, side: Side, reach: Reach): Trimmed {
  const { chain } = reach;
  const upright = side === "left" || side === "right";
  const [from, to] = upright ? [box.bottom, box.top] : [box.left, box.right];
  const range = rangeBetween(chain, from, to);
  const [low, high] = upright ? [box.left, box.right] : [box.bottom, box.top];
  const isLevel = range.low === range.high;
  if (side === "left" || side === "bottom") {
    if (range.high <= low) return "straight";
    if (range.low < high && range.high >= high && !isLevel) return partedBy(reach, from, to);
    box[side] = Math.max(low, range.low);
  } else {
    if (range.low >= high) return "straight";
    if (range.high > low && range.low <= low && !isLevel) return partedBy(reach, from, to);
    box[side] = Math.min(high, range.high);
  }
  return isLevel ? "straight" : "scribed";
}

/** A slope that leaves a box leaves a wedge of it; what a riser leaves may be any piece. */
function partedBy({ chain, outlined }: Reach, from: Nm, to: Nm): Trimmed {
  if (hasRiser(chain, from, to)) return "tangled";
  return outlined ? "outlined wedge" : "wedge";
}

/** A wedge runs out to nothing, so it is a sliver unless slivers don't count or it may be hidden. */
function isWedgeSliver({ region, across, up }: Field, tile: Box): boolean {
  if (across.sliver === 0 || up.sliver === 0) return false;
  const isHidden =
    (region.hiddenLeft !== null && tile.left < across.clearLow) ||
    (region.hiddenRight !== null && tile.right > across.clearHigh);
  return !isHidden;
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
