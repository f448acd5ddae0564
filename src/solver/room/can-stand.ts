import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import type { WallFields } from "./wall-fields.js";

/**
 * Whether an opening with its place given in one direction can be kept apart from all that stays where it
 * is, by its place in the other.
 */
export function canStand(fields: WallFields, i: number, direction: "x" | "y", at: Nm): boolean {
  const { at: drawn, free } = fields.wall.openings[i]!;
  const box = fields.boxAt(i, { ...drawn, [direction]: at });
  const { obstacles } = fields.base(fields.drawn.stop).fields.own;
  const [given, other] =
    direction === "x" ? ([acrossOf, upOf] as const) : ([upOf, acrossOf] as const);
  const own = direction === "x" ? drawn.y : drawn.x;
  const range = (direction === "x" ? free.y : free.x) ?? { min: own, max: own };
  const passed = obstacles
    .filter((obstacle) => meet(given(obstacle), given(box)))
    .map((obstacle) => ({
      from: own + other(obstacle).from - other(box).to,
      to: own + other(obstacle).to - other(box).from,
    }))
    .sort((a, b) => a.from - b.from);
  let place = range.min;
  for (const { from, to } of passed) if (from < place && place < to) place = to;
  return place <= range.max;
}

interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

const acrossOf = ({ left, right }: Box): Stretch => ({ from: left, to: right });
const upOf = ({ bottom, top }: Box): Stretch => ({ from: bottom, to: top });

function meet(a: Stretch, b: Stretch): boolean {
  return a.from < b.to && b.from < a.to;
}
