import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
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

export function settingOf(plan: Plan): Setting {
  return {
    plan,
    ...arrange(plan.walls),
    length: (nm) => formatLength(nm, plan.units).replace(UNIT_BEHIND, ""),
  };
}
