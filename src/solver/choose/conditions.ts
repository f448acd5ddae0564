import type { Nm } from "../../measure/index.js";
import type { Chain } from "../chain.js";
import type { Region } from "../solved.js";
import { type Axis, type Field, isFlat, type Reach } from "./field.js";

/**
 * A critical condition in one direction: the near edge of some tile, `off` further on, meets a
 * place. Between two neighbouring conditions nothing about a start changes but the sizes of its end
 * cuts, so the best starts are found at the conditions themselves.
 */
export interface Condition {
  /** The place less `off`: where the near edge of a tile is when the condition holds. */
  readonly at: Nm;
  /** Twice `at` where half nanometres tell; the condition then holds at every half module. */
  readonly halved: boolean;
  /** Whether the pieces may change just beside it too, so that its neighbours are weighed as well. */
  readonly abrupt: boolean;
}

/** The conditions across, in the same order for every joint. */
export function conditionsAcross(field: Field): Condition[] {
  const { region } = field;
  const { hiddenLeft, hiddenRight } = region;
  const conditions = conditionsOf(
    field.across,
    [...field.boxes, ...field.circles].map((box) => [box.left, box.right] as const),
    { from: risersOf(region, "left"), to: risersOf(region, "right") },
    [field.sides.bottom, field.sides.top].flatMap((side) => (isFlat(side) ? [] : side.chain.at)),
  );
  if (hiddenLeft && isFlat(field.sides.left)) conditions.push(...plainEdge(field.sides.left.low));
  if (hiddenRight && isFlat(field.sides.right))
    conditions.push(...plainEdge(field.sides.right.low));
  return conditions;

  function plainEdge(place: Nm): Condition[] {
    return [place, place - field.across.face].map((at) => ({ at, halved: false, abrupt: true }));
  }
}

/** The conditions up, in the same order for every joint. */
export function conditionsUp(field: Field): Condition[] {
  return conditionsOf(
    field.up,
    [...field.boxes, ...field.circles].map((box) => [box.bottom, box.top] as const),
    { from: levelsOf(field.sides.bottom), to: levelsOf(field.sides.top) },
    [field.sides.left, field.sides.right].flatMap((side) => (isFlat(side) ? [] : side.chain.at)),
  );
}

/** Straight edges along a part of a side that slopes elsewhere: those from which, and up to which, tile is seen. */
interface PartialEdges {
  readonly from: readonly Nm[];
  readonly to: readonly Nm[];
}

/** The risers of the bottom and the top that face one way. */
function risersOf({ bottom, top }: Region, faces: "left" | "right"): Nm[] {
  const risesAt = ({ at, value }: Chain, way: 1 | -1): Nm[] =>
    at.filter((place, i) => place === at[i - 1] && way * (value[i]! - value[i - 1]!) > 0);
  const way = faces === "left" ? 1 : -1;
  return [...risesAt(top, way), ...risesAt(bottom, way === 1 ? -1 : 1)];
}

/** The heights at which a side that slopes is level for a part. */
function levelsOf({ chain: { value } }: Reach): Nm[] {
  return [...new Set(value.filter((height, i) => height === value[i - 1]))];
}

function conditionsOf(
  axis: Axis,
  obstacles: readonly (readonly [Nm, Nm])[],
  parts: PartialEdges,
  kinks: readonly Nm[],
): Condition[] {
  const { face, seenFrom, seenTo, clearLow, clearHigh } = axis;
  const conditions: Condition[] = [];
  const add = (place: Nm, offs: readonly Nm[], abrupt: boolean) => {
    for (const off of offs) {
      const atEdge = off === 0 || off === face;
      conditions.push({ at: place - off, halved: false, abrupt: abrupt && atEdge });
    }
  };
  // A side's lowest and highest places stand for it where it slopes.
  for (const place of new Set([seenFrom.low, seenFrom.high, clearLow])) {
    add(place, offsFrom(axis), true);
  }
  for (const place of new Set([seenTo.low, seenTo.high, clearHigh])) add(place, offsTo(axis), true);
  for (const [from, to] of obstacles) {
    add(from, offsTo(axis), true);
    add(to, offsFrom(axis), true);
  }
  for (const place of parts.from) add(place, offsFrom(axis), true);
  for (const place of parts.to) add(place, offsTo(axis), true);
  for (const kink of kinks) add(kink, [0, face], false);
  conditions.push({ at: clearLow + clearHigh - face, halved: true, abrupt: false });
  return conditions;
}

/** Where the near edge of a tile critically is, before a place from which pieces are seen. */
export function offsFrom({ face, sliver, half }: Axis): Nm[] {
  return [...new Set([0, face, face - half, face - sliver])];
}

/** Where the near edge of a tile critically is, before a place to which pieces are seen. */
export function offsTo({ face, sliver, half }: Axis): Nm[] {
  return [...new Set([0, face, half, sliver])];
}
