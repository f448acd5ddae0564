import { formatLength, type Nm } from "../../measure/index.js";
import type { Diagnostic } from "../../model/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import type { Takeoff } from "../../takeoff/index.js";
import { bothReadings, otherReading, otherUnit } from "../setting-out/reading.js";

/** All that the pages of a plan are made from. */
export interface Ground {
  readonly solved: SolvedPlan;
  readonly diagnostics: readonly Diagnostic[];
  readonly takeoff: Takeoff;
  readonly revision: string | null;
  /** A length in the plan's units. */
  readonly length: (nm: Nm) => string;
  /** A length to be read off or set: in the plan's units, and in the other system behind. */
  readonly both: (nm: Nm) => string;
  /** That other reading alone, and what it is read in. */
  readonly other: (nm: Nm) => string;
  readonly otherUnit: "mm" | "inches";
}

export function groundOf(
  solved: SolvedPlan,
  diagnostics: readonly Diagnostic[],
  takeoff: Takeoff,
  revision: string | null,
): Ground {
  const { units } = solved.plan;
  return {
    solved,
    diagnostics,
    takeoff,
    revision,
    length: (nm) => formatLength(nm, units),
    both: (nm) => bothReadings(nm, units),
    other: (nm) => otherReading(nm, units),
    otherUnit: otherUnit(units) === "mm" ? "mm" : "inches",
  };
}
