import type { Nm } from "../measure/index.js";
import type { FieldJoint, Lay, Origin } from "../model/index.js";
import {
  headJointNear,
  softJoints,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import { farStretches, mostApart } from "./movement-too-far.js";
import { type Stretch, stretchLength } from "./soft-stretches.js";

/** A joint that a lay's block may state as soft. */
export interface Softening {
  readonly lay: Lay;
  readonly joint: FieldJoint;
}

/** Where tile is so long that it would want more joints than this, they are for a person to place. */
const MOST_JOINTS = 40;

/**
 * The fewest joints that are to be soft so that no stretch one way is too far from one to the next, each as near as can
 * be to an even share; null where the tile has no such joints, or needs none.
 */
export function jointsToSoften(
  wall: SolvedWall,
  plan: SolvedPlan,
  way: Stretch["way"],
): readonly Softening[] | null {
  const far = farStretches(wall, plan).filter((stretch) => stretch.way === way);
  const chosen: Softening[] = [];
  for (const stretch of far) {
    const found = jointsWithin(withSoft(wall, chosen), plan, stretch);
    if (!found) return null;
    chosen.push(...found);
  }
  return chosen.length > 0 ? chosen : null;
}

function jointsWithin(
  wall: SolvedWall,
  plan: SolvedPlan,
  stretch: Stretch,
): readonly Softening[] | null {
  const far = stretchLength(stretch);
  const least = Math.ceil(far / mostApart(wall, plan)) - 1;
  for (let count = Math.max(1, least); count <= MOST_JOINTS; count++) {
    const joints = Array.from({ length: count }, (_, i) => {
      const at = stretch.from.at + Math.round(((i + 1) * far) / (count + 1));
      return stretch.way === "wide" ? headJointsAt(wall, at) : bedJointAt(wall, at);
    }).flat();
    const tried = withSoft(wall, joints);
    // What one block has no joint for, no number of them mends.
    if (softJoints(tried).missed.some(({ joint }) => isOneOf(joint, joints))) return null;
    if (!isFarWithin(tried, plan, stretch)) return joints;
  }
  return null;
}

function isOneOf(joint: FieldJoint, joints: readonly Softening[]): boolean {
  return joints.some((each) => each.joint === joint);
}

function isFarWithin(wall: SolvedWall, plan: SolvedPlan, { way, from, to }: Stretch): boolean {
  return farStretches(wall, plan).some(
    (stretch) => stretch.way === way && stretch.from.at < to.at && stretch.to.at > from.at,
  );
}

/** The head joint there of each block that has tile at the place, by its middle; the place itself where it has none. */
function headJointsAt(wall: SolvedWall, at: Nm): Softening[] {
  const blocks = new Map<Origin, SolvedLay[]>();
  for (const lay of wall.lays) {
    const { left, right } = lay.region.bounds;
    const { origin } = lay.lay;
    if (left < at && at < right) blocks.set(origin, [...(blocks.get(origin) ?? []), lay]);
  }
  return [...blocks.values()].map((lays) => {
    const near = headJointNear(lays, at);
    const x = typeof near === "string" ? at : near.from + Math.floor((near.to - near.from) / 2);
    const { lay } = lays[0]!;
    return { lay, joint: { kind: "head", x, origin: lay.origin } };
  });
}

/** The bed joint nearest to a height, of all lays; its course is counted through its block. */
function bedJointAt(wall: SolvedWall, y: Nm): Softening[] {
  const under = new Map<Origin, number>();
  const joints = wall.lays.flatMap(({ lay, courses, region }) => {
    const below = under.get(lay.origin) ?? 0;
    under.set(lay.origin, below + courses.length);
    return courses.map(({ number, top }) => ({
      off: Math.abs(Math.min(top, region.bounds.top) - y),
      softening: {
        lay,
        joint: { kind: "bed", over: below + number, origin: lay.origin },
      } satisfies Softening,
    }));
  });
  const [nearest] = joints.sort((a, b) => a.off - b.off);
  return nearest ? [nearest.softening] : [];
}

/** The wall as it would be with more soft joints stated: nothing else of it changes. */
function withSoft(solved: SolvedWall, more: readonly Softening[]): SolvedWall {
  const softened = (lay: Lay): Lay => {
    const own = more.filter((each) => each.lay.origin === lay.origin);
    return { ...lay, soft: [...lay.soft, ...own.map(({ joint }) => joint)] };
  };
  const lays = new Map(solved.wall.lays.map((lay) => [lay, softened(lay)]));
  return {
    ...solved,
    wall: { ...solved.wall, lays: [...lays.values()] },
    lays: solved.lays.map((each) => ({ ...each, lay: lays.get(each.lay) ?? softened(each.lay) })),
  };
}
