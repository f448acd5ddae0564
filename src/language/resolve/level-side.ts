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
 * The line, the steps and the risers of a bottom or a top, whose corners run rightwards. A level that is stepped up to
 * (of a top: down to) is a rectangle on the line; where a slope ends over what is beside it no rectangle can stand, and
 * the line itself has a riser.
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
  const lines = parts.map((part) => (parts.length === 1 ? lineOf(part) : wholeLine(part)));
  const line = lines.flat();
  const past = 2 * lowest(line) - highest(runs.flat()) - 1;
  const steps = runs.flatMap((run, i): OutlineStep[] => {
    const [before, after] = [runs[i - 1], runs[i + 1]];
    const { y } = run[0]!;
    const under = lines[parts.findIndex((part) => part.includes(run))]!;
    if (!isLevel(run) || runs.length === 1 || !reachesUnder(under, run)) return [];
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
  const risers = parts.slice(1).map((part, i): OutlineRiser => {
    const [end, start] = [parts[i]!.at(-1)!.at(-1)!, part[0]![0]!];
    const ends = [up * end.y, up * start.y];
    const solid = end.y > start.y ? "left" : "right";
    return { x: end.x, low: Math.min(...ends), high: Math.max(...ends), solid };
  });
  return { line: line.map(({ x, y }) => ({ x, y: up * y })), steps, risers };
}

/** The runs of a side in parts between which its line has a riser. */
function partsOf(runs: readonly Run[]): Run[][] {
  const parts: Run[][] = [];
  runs.forEach((run, i) => {
    const before = runs[i - 1];
    if (!before || endsOver(before, run)) parts.push([run]);
    else parts.at(-1)!.push(run);
  });
  return parts;
}

/** Whether the higher one of two runs at an upright step is a slope, which ends there. */
function endsOver(run: Run, next: Run): boolean {
  const higher = run.at(-1)!.y > next[0]!.y ? run : next;
  return !isLevel(higher);
}

/** The line of a part of a side, from end to end. */
function wholeLine(part: readonly Run[]): Corner[] {
  const line = lineOf(part);
  const [from, to] = [part[0]![0]!.x, part.at(-1)!.at(-1)!.x];
  return [
    ...(line[0]!.x > from ? [{ x: from, y: line[0]!.y }] : []),
    ...line,
    ...(line.at(-1)!.x < to ? [{ x: to, y: line.at(-1)!.y }] : []),
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

/** One line under all runs, along those that slope. */
function lineOf(runs: readonly Run[]): Corner[] {
  if (runs.length === 1) return [...runs[0]!];
  if (runs.every(isLevel)) return [{ x: runs[0]![0]!.x, y: lowest(runs.flat()) }];
  const line: Corner[] = [];
  runs.forEach((run, i) => {
    if (!isLevel(run)) return void line.push(...run);
    const next = runs[i + 1];
    if (next && isLevel(next)) {
      line.push({ x: next[0]!.x, y: Math.min(run[0]!.y, next[0]!.y) });
    }
  });
  return line;
}

/** Whether the line lies under a level run anywhere. */
function reachesUnder(line: readonly Corner[], run: Run): boolean {
  const { x: from, y } = run[0]!;
  const { x: to } = run.at(-1)!;
  const beyond = (corner: Corner | undefined) => corner !== undefined && corner.y < y;
  const inside = line.filter(({ x }) => x >= from && x <= to);
  if (inside.length > 0) return inside.some(beyond);
  const before = line.filter(({ x }) => x < from).at(-1);
  return beyond(before ?? line[0]) || beyond(line.find(({ x }) => x > to));
}

function lowest(corners: readonly Corner[]): Nm {
  return corners.reduce((least, { y }) => Math.min(least, y), Infinity);
}

function highest(corners: readonly Corner[]): Nm {
  return corners.reduce((most, { y }) => Math.max(most, y), -Infinity);
}
