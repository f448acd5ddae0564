import type { Nm } from "../../measure/index.js";
import { type Box, overlaps } from "../box.js";
import { type Chain, rangeBetween } from "../chain.js";
import { CUTS } from "../piece-table.js";
import { cutWeight, type Tally } from "./cell.js";
import type { Effort } from "./effort.js";
import type { Field } from "./field.js";
import { HOLE, type Part, partsOf, partsWithoutCutting } from "./parts.js";
import type { Span } from "./start-box.js";

/** Tiles that are alike: where the lower left corner of one of them may be, and how many there are. */
export interface Place {
  readonly left: Span;
  readonly bottom: Span;
  readonly many: number;
}

/** A least and a greatest size. */
interface Between {
  readonly least: Nm;
  readonly most: Nm;
}

/** Whether the pieces of a tile are the same, and the same to the judge, wherever in its place it is. */
export type IsSettled = boolean;

/** A place is wide when it leaves open more than such a part of a tile. */
const WIDE = 8;

const NONE = CUTS.indexOf("none");

/**
 * Adds what the pieces of like tiles come to at least, wherever in their place the tiles are. What every position of a tile covers
 * is its core, what any covers its reach: a part of the core is in some piece, and that piece is
 * within a part of the reach.
 */
export function addLeast(field: Field, place: Place, tally: Tally, effort: Effort): IsSettled {
  effort.cells += 1;
  const { face: across } = field.across;
  const { face: up } = field.up;
  const { left, bottom, many } = place;
  const reach = {
    left: left.from,
    bottom: bottom.from,
    right: left.to + across,
    top: bottom.to + up,
  };
  const core = {
    left: left.to,
    bottom: bottom.to,
    right: left.from + across,
    top: bottom.from + up,
  };
  if (isClear(field, reach)) {
    tally.tiles += many;
    return true;
  }
  // While much is open about a tile, cutting it tells little.
  const isWide = (reach.right - core.right) * WIDE > across || (reach.top - core.top) * WIDE > up;
  const parts = isWide ? partsWithoutCutting : partsOf;
  const mostParts = parts(field, reach, "outside", effort);
  if (!mostParts) return false;
  if (mostParts.length === 0) return true;
  if (core.left >= core.right || core.bottom >= core.top) return false;
  const sureParts = parts(field, core, "inside", effort);
  if (!sureParts || sureParts.length === 0) return false;
  tally.tiles += many;
  if (isUncut(mostParts, reach)) return true;
  const isCut = !isUncut(sureParts, core);
  let settled = isCut;
  let found = 0;
  for (const most of mostParts) {
    const inside = sureParts.filter((part) => isWithin(part.bounds, most.bounds));
    const sure = inside[0];
    if (!sure) continue;
    if (
      mostParts.length > 1 &&
      mostParts.some((other) => other !== most && isWithin(sure.bounds, other.bounds))
    ) {
      settled = false;
    }
    found++;
    const weights = [most.cut, sure.cut] as const;
    const isTwice =
      weights[1] === HOLE ||
      (cutWeight(weights[0]) === 2 && weights[0] !== HOLE && cutWeight(sure.cut) === 2);
    const weight = !isCut ? 0 : isTwice ? 2 : 1;
    if (isCut && weight !== cutWeight(weights[0])) settled = false;
    tally.cuts += weight * many;
    const bounds = inside.length === 1 ? sure.bounds : hull(inside);
    if (!addFaults(field, { reach, core, most: most.bounds, sure: bounds, many }, tally)) {
      settled = false;
    }
  }
  return settled && found === mostParts.length && found === sureParts.length;
}

/** Whether a tile that is somewhere in this box is whole, and seen whole. */
function isClear({ judge, sides, obstacles }: Field, reach: Box): boolean {
  const { left, bottom, right, top } = reach;
  for (const obstacle of obstacles) if (overlaps(obstacle, reach)) return false;
  return (
    left >= judge.clearLeft &&
    right <= judge.clearRight &&
    bottom >= judge.clearBottom &&
    top <= judge.clearTop &&
    left >= sides.left.high &&
    right <= sides.right.low &&
    bottom >= sides.bottom.high &&
    top <= sides.top.low
  );
}

/** Whether a tile's piece is a sliver wherever in its place the tile is, if there is one at all; null when there is none. */
export function isSliverIfAny(
  field: Field,
  { left, bottom }: Omit<Place, "many">,
  effort: Effort,
): boolean | null {
  const reach = {
    left: left.from,
    bottom: bottom.from,
    right: left.to + field.across.face,
    top: bottom.to + field.up.face,
  };
  const parts = partsOf(field, reach, "outside", effort);
  if (parts.length === 0) return null;
  const { judge } = field;
  const { hiddenLeft, hiddenRight } = field.region;
  return parts.every(({ bounds }) => {
    if (hiddenLeft && bounds.left < judge.clearLeft) return false;
    if (hiddenRight && bounds.right > judge.clearRight) return false;
    return (
      bounds.right - bounds.left < judge.sliverWidth ||
      bounds.top - bounds.bottom < judge.sliverHeight
    );
  });
}

function isUncut(parts: readonly Part[], box: Box): boolean {
  const part = parts[0];
  if (parts.length !== 1 || part?.cut !== NONE) return false;
  const { left, bottom, right, top } = part.bounds;
  return left === box.left && bottom === box.bottom && right === box.right && top === box.top;
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.bottom >= outer.bottom &&
    inner.top <= outer.top
  );
}

function hull(parts: readonly Part[]): Box {
  return {
    left: Math.min(...parts.map(({ bounds }) => bounds.left)),
    bottom: Math.min(...parts.map(({ bounds }) => bounds.bottom)),
    right: Math.max(...parts.map(({ bounds }) => bounds.right)),
    top: Math.max(...parts.map(({ bounds }) => bounds.top)),
  };
}

/** A piece that is somewhere between `sure` and `most`, of a tile between `core` and `reach`. */
interface Unsure {
  readonly reach: Box;
  readonly core: Box;
  readonly most: Box;
  readonly sure: Box;
  readonly many: number;
}

/** Adds the faults a piece has at least; whether they are always the same. */
function addFaults(field: Field, piece: Unsure, tally: Tally): boolean {
  const { most, sure, many } = piece;
  const { judge } = field;
  const { hiddenLeft, hiddenRight } = field.region;
  if (isHidden(hiddenLeft, hiddenRight, sure)) return isHidden(hiddenLeft, hiddenRight, most);
  const width = seenAcross(field, piece);
  const height = seenUp(field, piece);
  const isSliver = width.most < judge.sliverWidth || height.most < judge.sliverHeight;
  const maybeSliver = width.least < judge.sliverWidth || height.least < judge.sliverHeight;
  const halfAcross = width.most < judge.halfWidth && width.isBothCut;
  const maybeHalfAcross = width.least < judge.halfWidth && width.mayBeBothCut;
  const isHalf = halfAcross || height.most < judge.halfHeight;
  const settledSliver = isSliver === maybeSliver;
  if (isSliver) {
    tally.slivers += many;
    // One direction a sliver, the other under half.
    const sureHalf =
      (width.least >= judge.sliverWidth && halfAcross) ||
      (height.least >= judge.sliverHeight && height.most < judge.halfHeight);
    const maybeHalf =
      (width.most >= judge.sliverWidth && maybeHalfAcross) ||
      (height.most >= judge.sliverHeight && height.least < judge.halfHeight);
    if (sureHalf) tally.underHalf += many;
    return sureHalf === maybeHalf;
  }
  if (isHalf) tally.underHalf += many;
  const maybeHalf = maybeHalfAcross || height.least < judge.halfHeight;
  return settledSliver && isHalf === maybeHalf;
}

function isHidden(hiddenLeft: Chain | null, hiddenRight: Chain | null, piece: Box): boolean {
  const { left, bottom, right, top } = piece;
  return (
    (hiddenLeft !== null && right <= rangeBetween(hiddenLeft, bottom, top).low) ||
    (hiddenRight !== null && left >= rangeBetween(hiddenRight, bottom, top).high)
  );
}

interface SeenAcross extends Between {
  /** Whether both upright sides are cut for sure, or may be; in a running bond only then half counts. */
  readonly isBothCut: boolean;
  readonly mayBeBothCut: boolean;
}

function seenAcross({ judge }: Field, { reach, core, most, sure }: Unsure): SeenAcross {
  let [leftFrom, leftTo, rightFrom, rightTo] = [most.left, sure.left, sure.right, most.right];
  if (most.left < judge.clearLeft || most.right > judge.clearRight) {
    const left = judge.region.hiddenLeft ?? judge.region.left;
    const right = judge.region.hiddenRight ?? judge.region.right;
    leftFrom = Math.max(leftFrom, rangeBetween(left, sure.bottom, sure.top).high);
    leftTo = Math.max(leftTo, rangeBetween(left, most.bottom, most.top).high);
    rightTo = Math.min(rightTo, rangeBetween(right, sure.bottom, sure.top).low);
    rightFrom = Math.min(rightFrom, rangeBetween(right, most.bottom, most.top).low);
  }
  const isUncut =
    leftFrom === reach.left &&
    leftTo === core.left &&
    rightFrom === core.right &&
    rightTo === reach.right;
  const exempts = judge.forcesEnds;
  return {
    least: isUncut ? judge.across : Math.max(0, rightFrom - leftTo),
    most: isUncut ? judge.across : Math.max(0, Math.min(judge.across, rightTo - leftFrom)),
    isBothCut: !exempts || (leftFrom > core.left && rightTo < core.right),
    mayBeBothCut: !exempts || (leftTo > reach.left && rightFrom < reach.right && !isUncut),
  };
}

function seenUp({ judge }: Field, { reach, core, most, sure }: Unsure): Between {
  let [from, bottomTo, topFrom, to] = [most.bottom, sure.bottom, sure.top, most.top];
  if (most.bottom < judge.clearBottom || most.top > judge.clearTop) {
    const { region } = judge;
    from = Math.max(from, rangeBetween(region.bottom, sure.left, sure.right).high);
    bottomTo = Math.max(bottomTo, rangeBetween(region.bottom, most.left, most.right).high);
    to = Math.min(to, rangeBetween(region.top, sure.left, sure.right).low);
    topFrom = Math.min(topFrom, rangeBetween(region.top, most.left, most.right).low);
  }
  const isUncut =
    from === reach.bottom && bottomTo === core.bottom && topFrom === core.top && to === reach.top;
  return {
    least: isUncut ? judge.up : Math.max(0, topFrom - bottomTo),
    most: isUncut ? judge.up : Math.max(0, Math.min(judge.up, to - from)),
  };
}
