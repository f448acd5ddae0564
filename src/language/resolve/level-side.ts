import type { Nm } from "../../measure/index.js";
import type { Corner, Side } from "../../model/index.js";

/** A rectangle that an upright step leaves out, and which sides of it the wall's tile meets, by name. */
export interface OutlineStep {
  readonly left: Nm;
  readonly bottom: Nm;
  readonly right: Nm;
  readonly top: Nm;
  /** The sides of the step that the wall meets, each with the side of the wall that faces it. */
  readonly meets: Readonly<Record<Side, Side | null>>;
}

/** Where the line of a side jumps, beside the end of a slope; `solid` is the side of it at which no wall is. */
export interface OutlineRiser {
  readonly x: Nm;
  readonly low: Nm;
  readonly high: Nm;
  readonly solid: "left" | "right";
}

/** A bottom or a top: a line that slopes at most, but for its risers, and the steps that stand on it. */
export interface LevelSide {
  readonly line: readonly Corner[];
  readonly steps: readonly OutlineStep[];
  readonly risers: readonly OutlineRiser[];
}

/** The places across between which a side runs. */
interface Reach {
  readonly from: Nm;
  readonly to: Nm;
}

/** A stretch of a side without an upright step. */
type Run = readonly Corner[];

/**
 * The line, the steps and the risers of a bottom or a top, whose corners run rightwards. Of levels beside each other the
 * lowest (of a top: the highest) is the line, the others are rectangles on it; beside a slope the line itself has a riser, but
 * where such a rectangle stands that has it.
 */
export function levelSide(
  corners: readonly Corner[],
  side: "bottom" | "top",
  reach: Reach,
): LevelSide {
  // Seen as a bottom: the wall lies over it.
  const up = side === "bottom" ? 1 : -1;
  const runs = runsOf(corners.map(({ x, y }) => ({ x, y: up * y })));
  const parts = partsOf(runs);
  const line = parts.flatMap(lineOf);
  const past = 2 * lowest(line) - highest(runs.flat()) - 1;
  const isStep = (run: Run, part: readonly Run[]) => run[0]!.y > lowest(part.flat());
  const steps = runs.flatMap((run, i): OutlineStep[] => {
    const [before, after] = [runs[i - 1], runs[i + 1]];
    const { y } = run[0]!;
    const part = parts.find((each) => each.includes(run))!;
    if (!isLevel(run) || !isStep(run, part)) return [];
    const inner = { low: past, high: y };
    return [
      {
        left: before ? run[0]!.x : 2 * reach.from - reach.to,
        right: after ? run.at(-1)!.x : 2 * reach.to - reach.from,
        bottom: side === "bottom" ? inner.low : -inner.high,
        top: side === "bottom" ? inner.high : -inner.low,
        meets: {
          left: before && before.at(-1)!.y < y ? "right" : null,
          right: after && after[0]!.y < y ? "left" : null,
          bottom: side === "top" ? "top" : null,
          top: side === "bottom" ? "bottom" : null,
        },
      },
    ];
  });
  const risers = parts.slice(1).flatMap((part, i): OutlineRiser[] => {
    const before = parts[i]!;
    const [run, next] = [before.at(-1)!, part[0]!];
    const [end, start] = [run.at(-1)!, next[0]!];
    const hasStep =
      end.y > start.y ? isLevel(run) && isStep(run, before) : isLevel(next) && isStep(next, part);
    if (hasStep) return [];
    const ends = [up * end.y, up * start.y];
    const solid = end.y > start.y ? "left" : "right";
    return [{ x: end.x, low: Math.min(...ends), high: Math.max(...ends), solid }];
  });
  return { line: line.map(({ x, y }) => ({ x, y: up * y })), steps, risers };
}

/** The runs of a side in parts between which its line has a riser. */
function partsOf(runs: readonly Run[]): Run[][] {
  const parts: Run[][] = [];
  runs.forEach((run, i) => {
    const before = runs[i - 1];
    if (!before || !isLevel(before) || !isLevel(run)) parts.push([run]);
    else parts.at(-1)!.push(run);
  });
  return parts;
}

/** The line of a part of a side, from end to end: a slope's own, or the lowest of its levels. */
function lineOf(part: readonly Run[]): Corner[] {
  if (part.length === 1) return [...part[0]!];
  const y = lowest(part.flat());
  return [
    { x: part[0]![0]!.x, y },
    { x: part.at(-1)!.at(-1)!.x, y },
  ];
}

function runsOf(corners: readonly Corner[]): Run[] {
  const runs: Corner[][] = [];
  for (const corner of corners) {
    const run = runs.at(-1);
    if (run && run.at(-1)!.x < corner.x) run.push(corner);
    else if (run?.length === 1) runs[runs.length - 1] = [corner];
    else runs.push([corner]);
  }
  // A step at either end belongs to the upright side there.
  return runs.length > 1 ? runs.filter((run) => run.length > 1) : runs;
}

function isLevel(run: Run): boolean {
  return run.every(({ y }) => y === run[0]!.y);
}

function lowest(corners: readonly Corner[]): Nm {
  return corners.reduce((least, { y }) => Math.min(least, y), Infinity);
}

function highest(corners: readonly Corner[]): Nm {
  return corners.reduce((most, { y }) => Math.max(most, y), -Infinity);
}
