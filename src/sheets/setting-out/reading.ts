import { formatLength, type Nm, type Unit } from "../../measure/index.js";

/**
 * A height or a fence setting as it is read off, in the plan's units first and in the other system
 * behind: `35 7/32 in (894.6 mm)`. Both are rounded from the same exact length: inches to 1/32,
 * millimetres to 0.1.
 */
export function bothReadings(nm: Nm, units: Unit): string {
  return `${formatLength(nm, units)} (${otherReading(nm, units)})`;
}

/** The reading in the other system alone. */
export function otherReading(nm: Nm, units: Unit): string {
  return formatLength(nm, otherUnit(units));
}

/** Millimetres to a plan in inches or feet, inches to a metric one. */
export function otherUnit(units: Unit): "mm" | "inch" {
  return units === "inch" || units === "foot" ? "mm" : "inch";
}
