import type { Unit } from "../measure/index.js";

/** The paper that is usual where lengths are in these units: letter for inches and feet, else A4. */
export function usualPaper(units: Unit): "letter" | "a4" {
  return units === "inch" || units === "foot" ? "letter" : "a4";
}
