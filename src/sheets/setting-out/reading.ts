import { formatLength, type Nm, type Unit } from "../../measure/index.js";

/**
 * A height or a fence setting as it is read off, in the plan's units first and in the other system
 * behind: `35 7/32 in (894.6 mm)`. Both are rounded from the same exact length: inches to 1/32,
 * millimetres to 0.1.
 */
export function bothReadings(nm: Nm, units: Unit): string {
  const imperial = units === "inch" || units === "foot";
  const own = formatLength(nm, units);
  const other = formatLength(nm, imperial ? "mm" : "inch");
  return `${own} (${other})`;
}
