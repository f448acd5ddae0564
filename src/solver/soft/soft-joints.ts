import type { Nm } from "../../measure/index.js";
import type { FieldJoint, Lay } from "../../model/index.js";
import type { Box } from "../box.js";
import { goesStraightOn } from "../lay-order.js";
import { statedBetween } from "../lay-region.js";
import type { SolvedLay, SolvedWall } from "../solved.js";
import { type LayStrip, layStrips, partsIn, runOf } from "./between-lays.js";
import { headJointNear } from "./head-joint.js";
import type { MissedJoint, SoftJoints, SoftMiss, SoftPart, SoftRun } from "./soft-run.js";

/** The lays that one block states, which stand on each other. */
type Block = readonly SolvedLay[];

/** A soft joint before it is known what openings and other soft joints leave of it. */
type Unfilled = Omit<SoftRun, "parts">;

/**
 * The soft joints in the tile of a laid wall: the head and bed joints that its lays state, and the joints between
 * lays that are soft. What the plan states and the wall doesn't have is told by why.
 */
export function softJoints(solved: SolvedWall): SoftJoints {
  if (saysNothing(solved)) return { runs: [], missed: [] };
  const blocks = blocksOf(solved.lays);
  const strips = layStrips(solved);
  const between = strips.filter(isSoft).map(runBetween);
  const runs: Unfilled[] = [...between];
  const missed: MissedJoint[] = [];
  for (const block of blocks) {
    for (const joint of block[0]!.lay.soft) {
      const found = joint.kind === "head" ? headRun(block, joint) : bedRuns(block, joint, strips);
      const fresh = typeof found === "string" ? found : freshOf(found, runs);
      if (typeof fresh !== "string") runs.push(...fresh);
      else missed.push(missOf(block, joint, fresh));
    }
  }
  return { runs: filled(solved, runs), missed };
}

function saysNothing({ lays }: SolvedWall): boolean {
  return lays.every(({ lay }) => lay.soft.length === 0 && lay.area?.joint?.kind !== "movement");
}

/** The lays block by block; those of a block from the bottom up. */
function blocksOf(lays: readonly SolvedLay[]): Block[] {
  const blocks = new Map<Lay["origin"], SolvedLay[]>();
  for (const lay of lays) {
    const { origin } = lay.lay;
    blocks.set(origin, [...(blocks.get(origin) ?? []), lay]);
  }
  return [...blocks.values()];
}

function isSoft({ earlier, later }: LayStrip): boolean {
  if (goesStraightOn(later.lay, earlier.lay)) return false;
  return statedBetween(later.lay, earlier.lay)?.kind === "movement";
}

function runBetween(strip: LayStrip): Unfilled {
  const { earlier, later } = strip;
  const stated = statedBetween(later.lay, earlier.lay)!;
  const lay = later.lay.area?.joint ? later.lay : earlier.lay;
  const name = { kind: "between", lays: [earlier, later] } as const;
  return { ...runOf(strip), name, lay, origin: stated.origin };
}

function headRun(
  block: Block,
  { x, origin }: Extract<FieldJoint, { kind: "head" }>,
): Unfilled[] | SoftMiss {
  const joint = headJointNear(block, x);
  if (typeof joint === "string") return joint;
  const { from, to } = joint;
  const reach = {
    from: block[0]!.region.bounds.bottom,
    to: block.at(-1)!.region.bounds.top,
  };
  const name = { kind: "head", x: from + Math.floor((to - from) / 2) } as const;
  return [{ way: "upright", name, lay: block[0]!.lay, origin, from, to, reach }];
}

function bedRuns(
  block: Block,
  { over, origin }: Extract<FieldJoint, { kind: "bed" }>,
  strips: readonly LayStrip[],
): Unfilled[] | SoftMiss {
  let course = over;
  const lay = block.find(({ courses }) => {
    if (course <= courses.length) return true;
    course -= courses.length;
    return false;
  });
  if (!lay) return "no-course";
  const stated = { way: "level", lay: lay.lay, origin } as const;
  const name = { kind: "bed", lay, course } as const;
  const [under, next] = [lay.courses[course - 1]!, lay.courses[course]];
  if (next) {
    const { left, right } = lay.region.bounds;
    const reach = { from: left, to: right };
    return [{ ...stated, name, from: under.top, to: next.bottom, reach }];
  }
  const runs = strips
    .filter((strip) => isOver(strip, lay))
    .map((strip) => ({ ...stated, ...runOf(strip), name }));
  return runs.length > 0 ? runs : "nothing-over";
}

/** Whether a joint between lays lies over the last course of one of them. */
function isOver({ earlier, later, side, box }: LayStrip, lay: SolvedLay): boolean {
  if (earlier === lay) return side === "top";
  return later === lay && side === "bottom" && box.bottom === lay.region.bounds.top;
}

/** Those that are not soft yet. */
function freshOf(found: readonly Unfilled[], had: readonly Unfilled[]): Unfilled[] | SoftMiss {
  const fresh = found.filter((run) => !had.some((other) => isSame(run, other)));
  return fresh.length > 0 ? fresh : "twice";
}

function isSame(a: Unfilled, b: Unfilled): boolean {
  return (
    a.way === b.way &&
    a.from === b.from &&
    a.to === b.to &&
    a.reach.from === b.reach.from &&
    a.reach.to === b.reach.to
  );
}

function missOf(block: Block, joint: FieldJoint, why: SoftMiss): MissedJoint {
  const courses = block.reduce((sum, lay) => sum + lay.courses.length, 0);
  return { lay: block[0]!.lay, joint, why, courses };
}

/** With what is filled of each: where two cross, the level one goes through. */
function filled(solved: SolvedWall, runs: readonly Unfilled[]): SoftRun[] {
  const inOrder = (a: Unfilled, b: Unfilled): number =>
    a.from - b.from || a.reach.from - b.reach.from;
  const level = runs.filter(({ way }) => way === "level").sort(inOrder);
  const upright = runs.filter(({ way }) => way === "upright").sort(inOrder);
  const ordered = [...level, ...upright];
  return ordered.map((run, i) => ({
    ...run,
    parts: partsOf(solved, run, ordered.slice(0, i).map(softBox)),
  }));
}

/** How long what is filled of a soft joint is; where a sloped side ends it, to the longer of its two edges. */
export function softLength({ way, parts }: Pick<SoftRun, "way" | "parts">): Nm {
  return parts.reduce((sum, { bounds: { left, right, bottom, top } }) => {
    return sum + (way === "upright" ? top - bottom : right - left);
  }, 0);
}

/** The box of a soft joint, openings and what crosses it not taken away. */
export function softBox({ way, from, to, reach }: Omit<SoftRun, "parts">): Box {
  return way === "upright"
    ? { left: from, right: to, bottom: reach.from, top: reach.to }
    : { left: reach.from, right: reach.to, bottom: from, top: to };
}

function partsOf(solved: SolvedWall, run: Unfilled, without: readonly Box[]): SoftRun["parts"] {
  const box = softBox(run);
  const { name } = run;
  if (name.kind === "head") return headParts(solved, run, without);
  const isBetween = name.kind === "between" || name.course === name.lay.courses.length;
  if (isBetween) return partsIn(null, solved.region, box, without);
  return partsIn(name.lay, name.lay.region, box, without);
}

/** A head joint goes through the lays of its block and the bed joints between them. */
function headParts(solved: SolvedWall, run: Unfilled, without: readonly Box[]): SoftPart[] {
  const box = softBox(run);
  const block = solved.lays.filter(({ lay }) => lay.origin === run.lay.origin);
  return block.flatMap((lay, i) => {
    const parts = partsIn(lay, lay.region, box, without);
    const under = block[i - 1];
    if (!under) return parts;
    const gap = { ...box, bottom: under.region.bounds.top, top: lay.region.bounds.bottom };
    return [...partsIn(null, solved.region, gap, without), ...parts];
  });
}
