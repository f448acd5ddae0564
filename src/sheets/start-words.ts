import { exactLength, formatLength, type Nm, type Unit } from "../measure/index.js";
import type { AcrossStart, UpStart } from "../model/index.js";

/** As a plan writes it where the plan's units can say it exactly, else as people are told it. */
export function toldLength(nm: Nm, unit: Unit): string {
  const exact = exactLength(nm, unit);
  return exact.endsWith("mm") ? formatLength(nm, unit) : exact;
}

/** A start as the plan would state it: `across tile centred on wall`. */
export function acrossWords(start: AcrossStart, units: Unit, length = exactLength): string {
  if (start.kind === "full-tile") return `across full tile from ${start.from}`;
  if (start.kind === "wrapped") return `across wrapped from ${start.wall} ${start.joint}`;
  if (start.kind === "mirrored") return `across mirrored from ${start.wall}`;
  const { centre } = start;
  switch (centre.on) {
    case "wall":
      return `across ${start.kind} centred on wall`;
    case "opening":
      return `across ${start.kind} centred on ${centre.opening.name}`;
    case "place":
      return `across ${start.kind} centred at ${length(centre.x, units)}`;
  }
}

/** A start as the plan would state it: `up full course from bottom`. */
export function upWords(start: UpStart, units: Unit, length = exactLength): string {
  switch (start.kind) {
    case "full-course":
      return `up full course from ${start.from}`;
    case "at-opening":
      return `up full course ${start.relation} ${start.opening.name}`;
    case "joint":
      return `up joint at ${length(start.y, units)}`;
  }
}
