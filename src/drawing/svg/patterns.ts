import type { Container, Dom } from "@svgdotjs/svg.js";
import { fillOf, strokeOf, type ToneName } from "../theme.js";
import { add } from "./pen.js";

/** A hatch: told by its direction, spacing and weight as much as by its tone. Lengths in ems. */
interface Hatch {
  readonly id: HatchId;
  readonly base: ToneName | null;
  readonly line: ToneName;
  readonly spacing: number;
  readonly weight: number;
  readonly turned: number;
  /** Path data on a square of side 1. */
  readonly path: string;
}

export type HatchId =
  "cut" | "notch" | "scribe" | "hole" | "sliver" | "soft" | "build" | "hidden" | "trim";

const ONE_LINE = "M0 0.5H1";
const CROSSED = "M0 0.5H1M0.5 0V1";
const DASHES = "M0 0.25H0.6M0.5 0.75H1M0 0.75H0.1";

const HATCHES: readonly Hatch[] = [
  hatch("cut", "cut", "cut-hatch", 0.5, 0.05, -45, ONE_LINE),
  hatch("notch", "notch", "notch-hatch", 0.34, 0.07, 45, ONE_LINE),
  hatch("scribe", "scribe", "scribe-hatch", 0.5, 0.08, 0, DASHES),
  hatch("hole", "hole", "hole-hatch", 0.36, 0.05, 0, CROSSED),
  hatch("sliver", "sliver", "sliver-hatch", 0.36, 0.09, 45, CROSSED),
  hatch("soft", "soft", "paper", 0.2, 0.03, -45, ONE_LINE),
  hatch("build", "build", "muted", 0.2, 0.03, 45, ONE_LINE),
  hatch("hidden", null, "muted", 0.3, 0.05, -60, ONE_LINE),
  hatch("trim", "trim", "trim-line", 0.4, 0.03, 90, ONE_LINE),
];

function hatch(
  id: HatchId,
  base: ToneName | null,
  line: ToneName,
  spacing: number,
  weight: number,
  turned: number,
  path: string,
): Hatch {
  return { id, base, line, spacing, weight, turned, path };
}

/** The hatches, each once. */
export function drawPatterns(defs: Container | Dom, em: number): void {
  for (const { id, base, line, spacing, weight, turned, path } of HATCHES) {
    const side = spacing * em;
    const pattern = add(defs, "pattern", {
      id: `gl-${id}`,
      patternUnits: "userSpaceOnUse",
      width: side,
      height: side,
      patternTransform: `rotate(${turned})`,
    });
    if (base) add(pattern, "rect", { width: side, height: side, ...fillOf(base) });
    add(pattern, "path", {
      d: scaled(path, side),
      ...strokeOf(line),
      "stroke-width": weight * em,
    });
  }
}

/** The fill that a hatch gives. */
export function hatchFill(id: HatchId): string {
  return `url(#gl-${id})`;
}

function scaled(path: string, side: number): string {
  return path.replace(/\d+(?:\.\d+)?/g, (n) => String(Math.round(Number(n) * side * 1000) / 1000));
}
