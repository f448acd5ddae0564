import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";

/** What every part of a picture shares: the plan, the size of text, the plan's own units. */
export interface Setting {
  readonly plan: Plan;
  /** The height of ordinary text, in picture millimetres. */
  readonly em: number;
  /** A length in the plan's units. */
  readonly length: (nm: Nm) => string;
}

/** Preferred numbers (ISO 3, R20): text sizes step by these, so a small change of a wall leaves them. */
const R20 = [
  1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10,
];

/** A wall this many times as high as its text reads well on a page or a screen. */
const EMS_UP = 62;
/** So do all walls together with what stands beside each, this many times as wide. */
const EMS_ACROSS = 155;
const EMS_BESIDE = 26;
/** Many walls make a wide picture, not one of text alone. */
const LEAST_EMS_ACROSS = 60;

/** The picture names its unit once, at the top. */
const UNIT_BEHIND = / (?:in|mm|cm|m)$/;

export function settingOf(plan: Plan): Setting {
  const up = Math.max(1, ...plan.walls.map((wall) => wall.size.up)) / 1e6;
  const across = plan.walls.reduce((sum, wall) => sum + wall.size.across, 0) / 1e6;
  const beside = EMS_BESIDE * plan.walls.length;
  const room = Math.max(LEAST_EMS_ACROSS, EMS_ACROSS - beside);
  return {
    plan,
    em: preferred(Math.max(up / EMS_UP, across / room)),
    length: (nm) => formatLength(nm, plan.units).replace(UNIT_BEHIND, ""),
  };
}

/** The smallest preferred number that is no less, from a thousandth up. */
function preferred(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(Math.max(value, 0.001)));
  const step = R20.find((each) => each * decade >= value) ?? 10;
  return Math.round(step * decade * 1e6) / 1e6;
}
