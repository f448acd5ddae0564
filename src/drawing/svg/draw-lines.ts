import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import { rounded } from "../picture.js";
import type { DimensionRank, Points, RuledLine, SeverityMark, WallScene } from "../scene.js";
import { strokeOf, type ToneName } from "../theme.js";
import { dashes } from "./dashes.js";
import { add, linePath, ringPath, type Attributes } from "./pen.js";

export const LINE_STYLE: Readonly<
  Record<RuledLine["kind"], { tone: ToneName; weight: number; dash: readonly number[] }>
> = {
  level: { tone: "level", weight: 0.08, dash: [1.6, 0.3, 0.3, 0.3] },
  centre: { tone: "centre", weight: 0.06, dash: [1, 0.25, 0.15, 0.25] },
  set: { tone: "ink", weight: 0.14, dash: [0.5, 0.2] },
  leader: { tone: "muted", weight: 0.05, dash: [] },
};

/** The level line, the centre line, the top of what is set and the leaders of labels that stand apart. */
export function drawLines(into: Dom, wall: WallScene, em: number): void {
  for (const kind of ["centre", "level", "set", "leader"] as const) {
    const lines = wall.lines.filter((line) => line.kind === kind);
    if (lines.length === 0) continue;
    add(into, "path", {
      id: `gl-${idPart(wall.name)}-${kind}`,
      ...lineStyle(kind, em),
      d: lines.map((line) => linePath(line.points)).join(""),
    });
  }
}

export function lineStyle(kind: RuledLine["kind"], em: number): Attributes {
  const { tone, weight, dash } = LINE_STYLE[kind];
  const dashed = dash.length > 0 ? { "stroke-dasharray": dashes(dash, em) } : {};
  return { ...strokeOf(tone), "stroke-width": weight * em, ...dashed };
}

/** Dimension lines with slant ticks, one group a rank. */
export function drawDimensions(into: Dom, wall: WallScene, em: number): void {
  for (const rank of wall.dimensions) {
    const group = add(into, "g", {
      id: `gl-${idPart(wall.name)}-dimension-${idPart(rank.part)}`,
      fill: "none",
    });
    drawRank(group, rank, em);
  }
}

function drawRank(group: Dom, { extensions, lines, ticks }: DimensionRank, em: number): void {
  add(group, "path", {
    ...strokeOf("hairline"),
    "stroke-width": 0.04 * em,
    d: segments(extensions),
  });
  add(group, "path", { ...strokeOf("muted"), "stroke-width": 0.06 * em, d: segments(lines) });
  add(group, "path", { ...strokeOf("ink"), "stroke-width": 0.11 * em, d: slants(ticks, em) });
}

function segments(numbers: readonly number[]): string {
  const parts: string[] = [];
  for (let i = 0; i < numbers.length; i += 4) parts.push(linePath(numbers.slice(i, i + 4)));
  return parts.join("");
}

function slants(middles: Points, em: number): string {
  const half = 0.26 * em;
  const parts: string[] = [];
  for (let i = 0; i < middles.length; i += 2) {
    const [x, y] = [middles[i]!, middles[i + 1]!];
    parts.push(linePath([x - half, y + half, x + half, y - half].map(rounded)));
  }
  return parts.join("");
}

const MARK_DASH: Readonly<Record<SeverityMark, readonly number[]>> = {
  error: [],
  warning: [0.5, 0.22],
  information: [0.1, 0.2],
};

/** Outlines of the pieces that findings speak of: whole for errors, dashed for warnings, dotted for notes. */
export function drawMarks(into: Dom, wall: WallScene, em: number): void {
  for (const severity of ["information", "warning", "error"] as const) {
    const own = wall.marks.filter((mark) => mark.severity === severity);
    if (own.length === 0) continue;
    const dash = MARK_DASH[severity];
    add(into, "path", {
      id: `gl-${idPart(wall.name)}-marks-${severity}`,
      ...strokeOf(severity),
      "stroke-width": (severity === "error" ? 0.16 : 0.12) * em,
      "stroke-linejoin": "round",
      ...(dash.length > 0 ? { "stroke-dasharray": dashes(dash, em) } : {}),
      d: own.map((mark) => ringPath(mark.ring)).join(""),
    });
  }
}
