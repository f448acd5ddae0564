import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Plan, Wall } from "../../model/index.js";
import { arrange } from "./arrangement.js";

/** What every part of a picture shares: the plan, the size of text, the plan's own units. */
export interface Setting {
  readonly plan: Plan;
  /** The height of ordinary text, in picture millimetres. */
  readonly em: number;
  /** How many walls stand in each row. */
  readonly rows: readonly number[];
  /** A length in the plan's units. */
  readonly length: (nm: Nm) => string;
}

/** The picture names its unit once, at the top. */
const UNIT_BEHIND = / (?:in|mm|cm|m)$/;

/** `shown` are the walls in the picture: all of the plan, or some of them. */
export function settingOf(plan: Plan, shown: readonly Wall[] = plan.walls): Setting {
  return {
    plan,
    ...arrange(shown),
    length: (nm) => formatLength(nm, plan.units).replace(UNIT_BEHIND, ""),
  };
}
