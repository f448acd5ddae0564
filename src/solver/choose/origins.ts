import type { Nm } from "../../measure/index.js";
import { type Condition, conditionsAcross, conditionsUp } from "./conditions.js";
import type { Field } from "./field.js";

/** The critical starts across, each as a tile's left edge within one module of the region's left. */
export function criticalAcross(field: Field): Nm[] {
  const { module, low } = field.across;
  const starts = new Set<Nm>();
  for (const condition of conditionsAcross(field)) {
    for (const shift of shiftsOf(field, condition)) collect(starts, condition, shift, module, low);
  }
  return [...starts].sort((a, b) => a - b);
}

/** The critical starts up, each as the bottom of the lowest course that may have a piece. */
export function criticalUp(field: Field): Nm[] {
  const { module, low, face } = field.up;
  const starts = new Set<Nm>();
  for (const condition of conditionsUp(field)) {
    collect(starts, condition, 0, module, low - face + 1);
  }
  return [...starts].sort((a, b) => a - b);
}

/** The place moved by whole modules to [from, from + module). */
export function within(place: Nm, module: Nm, from: Nm): Nm {
  return place - Math.floor((place - from) / module) * module;
}

/** The most phases of a bond that are all paired with each other. */
const MOST_PAIRED = 12;

/** A balance is struck between two phases, so it is shifted by the sum of theirs. */
function shiftsOf({ shifts }: Field, { halved }: Condition): Iterable<Nm> {
  if (!halved) return shifts;
  // In long bonds the other pairs are these again but for the rounding of the shifts.
  const others = shifts.length <= MOST_PAIRED ? shifts : [shifts[0]!, shifts.at(-1)!];
  return new Set(shifts.flatMap((a) => others.map((b) => a + b)));
}

function collect(
  starts: Set<Nm>,
  { at, halved, abrupt }: Condition,
  shift: Nm,
  module: Nm,
  from: Nm,
): void {
  const add = (place: Nm) => {
    starts.add(within(place, module, from));
    if (!abrupt) return;
    starts.add(within(place - 1, module, from));
    starts.add(within(place + 1, module, from));
  };
  if (!halved) {
    add(at - shift);
    return;
  }
  for (const twice of [at - shift, at - shift + module]) {
    add(Math.floor(twice / 2));
    if (twice % 2 !== 0) add(Math.ceil(twice / 2));
  }
}
