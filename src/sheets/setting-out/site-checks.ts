import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import {
  buildOf,
  moduleAcross,
  moduleUp,
  type SolvedPlan,
  type SolvedWall,
  valueAt,
} from "../../solver/index.js";
import { bareSideOf, placesAlong } from "./bare-sides.js";
import { isAllSet, isOverSet, layToCome } from "./lay-to-come.js";
import { workingLine } from "./level-line.js";
import { measuresOf } from "./measures.js";
import { openingChecks } from "./opening-checks.js";
import { plumbLines } from "./plumb-lines.js";
import { type SideGround, sideChecks, sideSlack } from "./side-checks.js";
import { type SiteCheck, type Stop, stopsFrom } from "./site-check.js";
import { leastSlack, type Room } from "./slack.js";

/** So many tiles laid dry show a face that is not what the plan says (common practice: about ten). */
const DRY_TILES = 10;

/**
 * The dimensions of a wall to measure before anything more is cut, each with the values at which its plan
 * no longer holds: worked out from the plan's own pieces, joints and limits.
 */
export function siteChecks(plan: SolvedPlan, wall: SolvedWall): SiteCheck[] {
  const lay = layToCome(wall);
  const level = workingLine(plan, wall);
  if (!lay || !level || isAllSet(lay)) return [];
  const [left, right] = plumbLines(wall, lay);
  const overSet = isOverSet(wall, lay);
  const ground: SideGround = {
    wall,
    lay,
    // What is under a lay that stands on set courses is on the wall, and is measured no more.
    region: overSet ? lay.region : wall.region,
    overSet,
    lines: {
      left: left?.x ?? null,
      right: right?.x ?? null,
      bottom: level.y,
      top: level.y,
    },
    measures: (direction, joint) => measuresOf(lay, plan.plan.limits, direction, joint),
  };
  return [
    ...widthChecks(ground),
    ...sideChecks(ground),
    ...openingChecks(ground),
    ...buildChecks(plan, ground),
    ...runChecks(ground),
  ];
}

/** A wall without plumb lines is measured from end to end, at the bottom and at the top. */
function widthChecks(ground: SideGround): SiteCheck[] {
  const { wall, lines } = ground;
  const { left, right } = wall.wall.edges;
  if (lines.left !== null || left.meets.kind === "free" || right.meets.kind === "free") return [];
  const slack = leastSlack([sideSlack(ground, "left", null), sideSlack(ground, "right", null)]);
  const bare = { left: bareSideOf(wall.wall, "left"), right: bareSideOf(wall.wall, "right") };
  return placesAlong(wall.wall, "right").map((at) => ({
    wall: wall.wall.name,
    measure: { kind: "width", at },
    ...stopsFrom(valueAt(bare.left, at), { at: valueAt(bare.right, at), tile: -1 }, slack),
  }));
}

/** The tile and bed that cover an end: too thick hides too much, too thin shows the end's joint. */
function buildChecks({ plan }: SolvedPlan, ground: SideGround): SiteCheck[] {
  const { wall } = ground.wall;
  return (["left", "right"] as const).flatMap((side) => {
    const { meets, joint } = wall.edges[side];
    const build = meets.kind === "corner" && meets.lap === "under" ? buildOf(plan, meets.wall) : 0;
    const width = joint?.width ?? 0;
    if (meets.kind !== "corner" || build <= width) return [];
    const { shrink } = sideSlack(ground, side, null);
    const measure = { kind: "build", side, other: meets.wall } as const;
    const least: Stop = { at: width, then: "end-shows" };
    const most: Stop | null = shrink && { at: build + shrink.by, then: shrink.then };
    return [{ wall: wall.name, measure, planned: build, least, most }];
  });
}

/** Faces that are larger or smaller than the plan says, by how much they may be over all of a run. */
function runChecks(ground: SideGround): SiteCheck[] {
  const { lines, region } = ground;
  const { bounds } = region;
  const { left, bottom } = lines;
  return [
    ...(left === null ? [] : runCheck(ground, "across", left, bounds.right, "right")),
    ...(bottom === null ? [] : runCheck(ground, "up", bottom, bounds.top, "top")),
  ];
}

function runCheck(
  ground: SideGround,
  direction: "across" | "up",
  from: Nm,
  to: Nm,
  side: Side,
): SiteCheck[] {
  const { lattice } = ground.lay;
  const module = direction === "across" ? moduleAcross(lattice) : moduleUp(lattice);
  const whole = Math.floor((to - from) / module);
  const count = Math.min(DRY_TILES, whole);
  if (count < 2) return [];
  const planned = count * module;
  const { shrink, grow } = sideSlack(ground, side, null);
  // The run ends at the far side: what its tiles are larger by, its last piece is smaller by.
  const share = (room: Room): Nm => Math.floor((room.by * count) / whole);
  return [
    {
      wall: ground.wall.wall.name,
      measure: { kind: "run", direction, count },
      planned,
      least: grow && { at: planned - share(grow), then: grow.then },
      most: shrink && { at: planned + share(shrink), then: shrink.then },
    },
  ];
}
