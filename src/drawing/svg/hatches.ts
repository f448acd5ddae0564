import type { Dom } from "@svgdotjs/svg.js";
import type { Points } from "../scene.js";
import { fillAndStroke, fillOf, strokeOf, type ToneName } from "../theme.js";
import { dashes } from "./dashes.js";
import { hatchPath, type HatchRun } from "./hatch-path.js";
import { add, ringPath, type Attributes } from "./pen.js";

/** A hatch: told by its direction, spacing and weight as much as by its tone. Lengths in ems. */
interface Hatch {
  /** What the hatched shapes are filled with; null leaves them as they are. */
  readonly base: ToneName | null;
  readonly line: ToneName;
  readonly runs: readonly HatchRun[];
  readonly spacing: number;
  readonly weight: number;
  readonly dash?: readonly number[];
  /** The weight of the line round each shape. */
  readonly outline?: number;
}

const HATCHES = {
  cut: { base: "cut", line: "cut-hatch", runs: ["rising"], spacing: 0.7, weight: 0.05 },
  notch: { base: "notch", line: "notch-hatch", runs: ["falling"], spacing: 0.42, weight: 0.07 },
  scribe: {
    base: "scribe",
    line: "scribe-hatch",
    runs: ["level"],
    spacing: 0.3,
    weight: 0.08,
    dash: [0.3, 0.17],
  },
  hole: {
    base: "hole",
    line: "hole-hatch",
    runs: ["level", "upright"],
    spacing: 0.36,
    weight: 0.05,
  },
  sliver: {
    base: "sliver",
    line: "sliver-hatch",
    runs: ["rising", "falling"],
    spacing: 0.5,
    weight: 0.09,
    outline: 0.07,
  },
  soft: { base: "soft", line: "paper", runs: ["rising"], spacing: 1, weight: 0.04 },
  build: { base: "build", line: "muted", runs: ["falling"], spacing: 1, weight: 0.04 },
  hidden: { base: null, line: "muted", runs: ["rising"], spacing: 0.8, weight: 0.06 },
  trim: {
    base: "trim",
    line: "trim-line",
    runs: ["level"],
    spacing: 0.34,
    weight: 0.03,
    outline: 0.035,
  },
  // What became of a piece, in an overlay of two plans.
  moved: {
    base: "tile",
    line: "muted",
    runs: ["level"],
    spacing: 0.7,
    weight: 0.1,
    dash: [0.1, 0.6],
    outline: 0.03,
  },
  recut: {
    base: "scribe",
    line: "scribe-hatch",
    runs: ["rising"],
    spacing: 0.42,
    weight: 0.07,
    outline: 0.1,
  },
  fresh: {
    base: "notch",
    line: "notch-hatch",
    runs: ["rising", "falling"],
    spacing: 0.55,
    weight: 0.06,
    outline: 0.14,
  },
  gone: { base: null, line: "sliver-hatch", runs: ["falling"], spacing: 0.6, weight: 0.06 },
} as const satisfies Record<string, Hatch>;

export type HatchId = keyof typeof HATCHES;

/** Pieces that share one path: its id, and each piece's rings. */
export interface HatchedShape {
  readonly id: string;
  readonly pieces: readonly (readonly Points[])[];
}

/** The shapes of one hatch. */
export interface HatchedGroup {
  readonly hatch: HatchId;
  readonly id: string;
  readonly shapes: readonly HatchedShape[];
}

/**
 * Shapes on their ground, and over them the hatch's lines. The lines are drawn as lines: a fill
 * pattern would be shorter, but shows seams between its squares and is printed as a coarse bitmap.
 */
export function drawHatched(into: Dom, { hatch, id, shapes }: HatchedGroup, em: number): void {
  if (shapes.length === 0) return;
  const told: Hatch = HATCHES[hatch];
  const { line, runs, spacing, weight, dash } = told;
  const ground = groundOf(told, em);
  const group = add(into, "g", { id, "data-kind": hatch, "fill-rule": "evenodd", ...ground });
  const parts: string[] = [];
  for (const { id, pieces } of shapes) {
    add(group, "path", { id, d: pieces.map((rings) => rings.map(ringPath).join("")).join("") });
    for (const run of runs) {
      const ruling = { run, spacing: spacing * em, inset: (weight / 2) * em };
      for (const rings of pieces) parts.push(hatchPath(rings, ruling));
    }
  }
  add(into, "path", {
    id: `${id}-hatch`,
    ...strokeOf(line),
    "stroke-width": weight * em,
    ...(dash ? { "stroke-dasharray": dashes(dash, em) } : {}),
    d: parts.join(""),
  });
}

/** The ground, and for some hatches a line round each shape. */
function groundOf({ base, line, outline }: Hatch, em: number): Attributes {
  if (!base) return { fill: "none" };
  if (outline === undefined) return { ...fillOf(base) };
  return { ...fillAndStroke(base, line), "stroke-width": outline * em };
}
