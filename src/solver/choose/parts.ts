import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { type Box, overlaps } from "../box.js";
import { type Chain, rangeBetween, valueAt } from "../chain.js";
import { classify, classifyBox } from "../classify.js";
import { circleMeets } from "../clip/circle.js";
import { cutTile } from "../cut-tile.js";
import { CUTS } from "../piece-table.js";
import type { Region } from "../solved.js";
import { LOOKS } from "./budget.js";
import type { Effort } from "./effort.js";
import { type Field, isFlat } from "./field.js";
import { cornerWithin } from "./corner-part.js";
import { roundParts } from "./round-parts.js";

/** One connected part of a box within the region: its bounds, and its cut as an index into CUTS. */
export interface Part {
  readonly bounds: Box;
  readonly cut: number;
}

export const HOLE = CUTS.indexOf("hole");
const NOTCH = CUTS.indexOf("notch");
const SCRIBE = CUTS.indexOf("scribe");

/**
 * Whether the bounds of a part are to be exact; or are within it, or around it, where two sides slope
 * right through: they differ then by what one slope rises over the other.
 */
type Bounding = "exact" | "inside" | "outside";

/** The parts of a box within the region, as `cutTile` comes to them. A notch stands for a slot too. */
export function partsOf(
  field: Field,
  box: Box,
  bounding: Bounding,
  effort: Effort,
): readonly Part[] {
  return partsWithoutCutting(field, box, bounding, effort) ?? cutParts(field, box, effort);
}

/**
 * The same where no shape need be worked out, because a side is straight or slopes right through, and
 * at most one opening or hole is met; null where it must be cut to tell.
 */
export function partsWithoutCutting(
  field: Field,
  box: Box,
  bounding: Bounding,
  effort: Effort,
): readonly Part[] | null {
  effort.cells += LOOKS.parts;
  const trimmed = trimmedToSides(field, box);
  if (!trimmed) return [];
  const { bounds, slope, isTangled } = trimmed;
  if (isTangled) {
    if (meetsAny(field, bounds)) return null;
    return (
      wedgesOf(field, bounds) ??
      (bounding === "exact" ? cornerWithin(field, bounds) : cornerOf(field, bounds, bounding))
    );
  }
  const boxes = field.boxes.filter((other) => overlaps(other, bounds));
  const circles = field.region.roundHoles.filter(
    (round) => overlaps(round.box, bounds) && circleMeets(round.box, bounds),
  );
  if (boxes.length + circles.length === 0) {
    return [{ bounds, cut: slope ? SCRIBE : plainCut(bounds, box) }];
  }
  if (boxes.length + circles.length > 1) return null;
  const obstacle = boxes[0] ?? circles[0]!.box;
  // A slope that an opening or hole keeps clear of leaves its own part as it is.
  if (slope && !isInside(obstacle, slope)) return null;
  const parts = circles[0] ? roundParts(bounds, circles[0]) : null;
  if (parts) return parts.map((part) => ({ bounds: part, cut: HOLE }));
  const besides = circles[0]
    ? [{ bounds, cut: plainCut(bounds, box) }]
    : partsBeside(bounds, obstacle, box);
  if (!slope) return besides;
  return besides.map((part) =>
    part.cut !== HOLE && part.bounds[slope.side] === bounds[slope.side]
      ? { ...part, cut: SCRIBE }
      : part,
  );
}

/** Whether something keeps clear of where a side slopes. */
function isInside(obstacle: Box, { side, clear }: Sloping): boolean {
  return side === "left" || side === "bottom" ? obstacle[side] >= clear : obstacle[side] <= clear;
}

function meetsAny({ obstacles }: Field, box: Box): boolean {
  return obstacles.some((obstacle) => overlaps(obstacle, box));
}

/** The one part of a box through which several sides slope, none of them out of it. */
function cornerOf({ region }: Field, box: Box, bounding: "inside" | "outside"): Part[] | null {
  const { left: l, bottom: b, right: r, top: t } = box;
  const [left, right] = [rangeBetween(region.left, b, t), rangeBetween(region.right, b, t)];
  const [bottom, top] = [rangeBetween(region.bottom, l, r), rangeBetween(region.top, l, r)];
  const inside = {
    left: Math.max(l, left.high),
    bottom: Math.max(b, bottom.high),
    right: Math.min(r, right.low),
    top: Math.min(t, top.low),
  };
  if (inside.left >= inside.right || inside.bottom >= inside.top) return null;
  if (bounding === "inside") return [{ bounds: inside, cut: SCRIBE }];
  const outside = {
    left: Math.max(l, left.low),
    bottom: Math.max(b, bottom.low),
    right: Math.min(r, right.high),
    top: Math.min(t, top.high),
  };
  return [{ bounds: outside, cut: SCRIBE }];
}

/** The parts of a box that one side slopes out of; null where others cut it too. */
function wedgesOf({ region }: Field, box: Box): Part[] | null {
  const { left: l, bottom: b, right: r, top: t } = box;
  const cutting = (["left", "right", "bottom", "top"] as const).filter((side) => {
    const upright = side === "left" || side === "right";
    const { low, high } = upright
      ? rangeBetween(region[side], b, t)
      : rangeBetween(region[side], l, r);
    return side === "left" || side === "bottom" ? high > box[side] : low < box[side];
  });
  const side = cutting[0]!;
  if (cutting.length !== 1) return null;
  const upright = side === "left" || side === "right";
  const chain = region[side];
  const [from, to] = upright ? [b, t] : [l, r];
  const isLower = side === "left" || side === "bottom";
  const far = { left: r, right: l, bottom: t, top: b }[side];
  return stretchesClear(chain, from, to, far, isLower ? 1 : -1).map(([start, end]) => {
    const { low, high } = rangeBetween(chain, start, end);
    const along = upright ? { bottom: start, top: end } : { left: start, right: end };
    const near = isLower ? Math.max(box[side], low) : Math.min(box[side], high);
    return { bounds: { ...box, ...along, [side]: near }, cut: SCRIBE };
  });
}

/** Where a chain is on the near side of a value: below it (1), or above it (-1). */
function stretchesClear(
  chain: Chain,
  from: Nm,
  to: Nm,
  value: Nm,
  sign: 1 | -1,
): (readonly [Nm, Nm])[] {
  const { at, value: values } = chain;
  const isClear = (place: Nm) => sign * (value - valueAt(chain, place)) > 0;
  const marks = [from, to];
  for (let i = 0; i < at.length; i++) {
    if (at[i]! > from && at[i]! < to) marks.push(at[i]!);
    if (i === 0) continue;
    const [a, b] = [values[i - 1]!, values[i]!];
    if (value <= Math.min(a, b) || value >= Math.max(a, b)) continue;
    const place = Math.round(at[i - 1]! + ((at[i]! - at[i - 1]!) * (value - a)) / (b - a));
    if (place > from && place < to) marks.push(place);
  }
  marks.sort((a, b) => a - b);
  const stretches: [Nm, Nm][] = [];
  for (let i = 1; i < marks.length; i++) {
    const [start, end] = [marks[i - 1]!, marks[i]!];
    if (start === end || !isClear(Math.floor((start + end) / 2))) continue;
    const last = stretches.at(-1);
    // At a kink that only touches the value the part is not parted by more than a point.
    if (last?.[1] === start && isClear(start)) last[1] = end;
    else stretches.push([start, end]);
  }
  return stretches;
}

/** What was cut already of the tiles of a region: openings that may move leave most of them as they were. */
const CUT = new WeakMap<Region, Map<string, readonly Part[]>>();

function cutParts({ region, boxes, circles }: Field, box: Box, effort: Effort): readonly Part[] {
  const met = boxes.filter((other) => overlaps(other, box));
  const key = [box, ...met]
    .map(({ left, bottom, right, top }) => [left, bottom, right, top])
    .join();
  const cut = CUT.get(region) ?? new Map<string, readonly Part[]>();
  CUT.set(region, cut);
  const known = cut.get(key);
  if (known) return known;
  const round = circles.filter((circle) => circleMeets(circle, box));
  effort.cells += LOOKS.cut + (effort.round ?? 0) * round.length;
  const parts = cutTile(box, region, { boxes: met, circles: round }).map((part) => ({
    bounds: part.bounds,
    cut: classify(part, box),
  }));
  cut.set(key, parts);
  return parts;
}

function plainCut(part: Box, box: Box): number {
  const narrower = part.right - part.left < box.right - box.left;
  return classifyBox(narrower, part.top - part.bottom < box.top - box.bottom);
}

function partsBeside(bounds: Box, obstacle: Box, box: Box): Part[] {
  const { left, bottom, right, top } = bounds;
  const spansUp = obstacle.bottom <= bottom && obstacle.top >= top;
  const spansAcross = obstacle.left <= left && obstacle.right >= right;
  if (!spansUp && !spansAcross) {
    const isWithin =
      obstacle.left > left &&
      obstacle.right < right &&
      obstacle.bottom > bottom &&
      obstacle.top < top;
    return [{ bounds, cut: isWithin ? HOLE : NOTCH }];
  }
  const parts: Box[] = [];
  if (spansUp) {
    if (obstacle.left > left) parts.push({ ...bounds, right: obstacle.left });
    if (obstacle.right < right) parts.push({ ...bounds, left: obstacle.right });
  }
  if (spansAcross) {
    if (obstacle.bottom > bottom) parts.push({ ...bounds, top: obstacle.bottom });
    if (obstacle.top < top) parts.push({ ...bounds, bottom: obstacle.top });
  }
  if (spansUp && spansAcross) return [];
  return parts.map((part) => ({ bounds: part, cut: plainCut(part, box) }));
}

/** A side that slopes through a box, and the place past which the box is clear of it. */
interface Sloping {
  readonly side: Side;
  readonly clear: Nm;
}

/** A box drawn in to the straight sides of the region, and to the one that slopes through it. */
interface Trimmed {
  readonly bounds: Box;
  readonly slope: Sloping | null;
  /** Whether a side runs out of it, or two slope through it: it is drawn in to the straight ones alone then. */
  readonly isTangled: boolean;
}

/** How a side that slopes runs past a box, and in which direction it cuts. */
interface Passing {
  readonly side: Side;
  readonly low: Nm;
  readonly high: Nm;
}

/** The box drawn in to the region's sides; null where they leave nothing of it. */
function trimmedToSides({ sides, region }: Field, box: Box): Trimmed | null {
  let { left, bottom, right, top } = box;
  if (isFlat(sides.left)) left = Math.max(left, sides.left.low);
  if (isFlat(sides.right)) right = Math.min(right, sides.right.low);
  if (isFlat(sides.bottom)) bottom = Math.max(bottom, sides.bottom.low);
  if (isFlat(sides.top)) top = Math.min(top, sides.top.low);
  if (left >= right || bottom >= top) return null;
  const bounds = { left, bottom, right, top };
  const cutting: Passing[] = [];
  // A side that slopes elsewhere may run clear of the box.
  const look = (side: Side, from: Nm, to: Nm, near: Nm, far: Nm): boolean => {
    const isLower = near < far;
    const { low, high } = rangeBetween(region[side], from, to);
    if (isLower ? high > near : low < near) cutting.push({ side, low, high });
    return isLower ? low < far : high > far;
  };
  if (!isFlat(sides.left) && sides.left.high > left && !look("left", bottom, top, left, right))
    return null;
  if (!isFlat(sides.right) && sides.right.low < right && !look("right", bottom, top, right, left))
    return null;
  if (
    !isFlat(sides.bottom) &&
    sides.bottom.high > bottom &&
    !look("bottom", left, right, bottom, top)
  )
    return null;
  if (!isFlat(sides.top) && sides.top.low < top && !look("top", left, right, top, bottom))
    return null;
  const one = cutting[0];
  if (!one) return { bounds, slope: null, isTangled: false };
  const { side, low, high } = one;
  const isLower = side === "left" || side === "bottom";
  const far = { left: right, right: left, bottom: top, top: bottom }[side];
  const runsOut = isLower ? high >= far : low <= far;
  if (cutting.length > 1 || runsOut) return { bounds, slope: null, isTangled: true };
  const near = isLower ? Math.max(bounds[side], low) : Math.min(bounds[side], high);
  return {
    bounds: { ...bounds, [side]: near },
    slope: low < high ? { side, clear: isLower ? high : low } : null,
    isTangled: false,
  };
}
