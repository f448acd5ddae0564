import type { Nm } from "../../measure/index.js";
import { type Axis, type Field, isFlat } from "./field.js";

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
    [field.sides.left, field.sides.right].flatMap((side) => (isFlat(side) ? [] : side.chain.at)),
  );
}

function conditionsOf(
  axis: Axis,
  obstacles: readonly (readonly [Nm, Nm])[],
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
