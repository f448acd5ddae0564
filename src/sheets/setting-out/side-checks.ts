import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import {
  isStraight,
  moduleUp,
  type Region,
  type SolvedLay,
  type SolvedWall,
  valueAt,
} from "../../solver/index.js";
import { bareSideOf, placesAlong } from "./bare-sides.js";
import { type Border, type SiteCheck, stopsFrom } from "./site-check.js";
import { leastSlack, type Measures, type Rest, type Slack, slackOf } from "./slack.js";
import { acrossRow, restBefore, restPast, upRow } from "./tile-row.js";

/** What a wall's sides are measured from, and what their pieces are held against. */
export interface SideGround {
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
  /** What is still to be laid: the wall's region, over set courses the lay's. */
  readonly region: Region;
  readonly overSet: boolean;
  /** The plumb line or level line that faces each side; null where there is none. */
  readonly lines: Readonly<Record<Side, Nm | null>>;
  readonly measures: (direction: "across" | "up", joint: Nm | null) => Measures;
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** The distances to the wall's own sides: at each site reading, or one where a side is straight. */
export function sideChecks(ground: SideGround): SiteCheck[] {
  return SIDES.flatMap((side) => {
    const edge = ground.wall.wall.edges[side];
    // Nothing stands there that could be elsewhere: the tile ends where the plan says.
    if (edge.meets.kind === "free" && edge.measured.length === 0) return [];
    if (side === "bottom" && ground.overSet) return [];
    const straight = edge.measured.length === 0;
    const places = placesAlong(ground.wall.wall, side);
    const distinct = straight
      ? places.slice(0, 1)
      : places.filter((at) => isToCome(ground, side, at));
    const line = ground.lines[side];
    return line === null ? [] : distinct.map((at) => checkAt(ground, side, at, line, straight));
  });
}

function checkAt(ground: SideGround, side: Side, at: Nm, line: Nm, straight: boolean): SiteCheck {
  const { wall } = ground;
  const bare = valueAt(bareSideOf(wall.wall, side), at);
  const border: Border = { at: bare, tile: side === "left" || side === "bottom" ? 1 : -1 };
  return {
    wall: wall.wall.name,
    measure: { kind: "side", side, at: straight ? null : at },
    ...stopsFrom(line, border, sideSlack(ground, side, straight ? null : at)),
  };
}

/** The room at a side, at one place along it or (null) all along it. */
export function sideSlack(ground: SideGround, side: Side, at: Nm | null): Slack {
  const { wall, region, measures } = ground;
  const { measured } = wall.wall.edges[side];
  const toCome = measured.filter((reading) => isToCome(ground, side, reading.at));
  if (at === null && toCome.length > 0) {
    return leastSlack(toCome.map((reading) => sideSlack(ground, side, reading.at)));
  }
  const upright = side === "left" || side === "right";
  const scribed = !upright && !isStraight(region[side]);
  const joint = scribed ? null : (wall.wall.edges[side].joint?.width ?? 0);
  const limits = measures(upright ? "across" : "up", joint);
  const rests = upright ? endRests(ground, side, at) : [levelRest(ground, side, at ?? 0)];
  return leastSlack(rests.map((rest) => slackOf(rest, limits)));
}

/** Whether what is measured at a place along a side matters to what is still to be laid. */
function isToCome({ region, overSet }: SideGround, side: Side, at: Nm): boolean {
  const upright = side === "left" || side === "right";
  return !upright || !overSet || at > region.bounds.bottom;
}

function levelRest({ region, lay }: SideGround, side: Side, at: Nm): Rest {
  const border = valueAt(region[side], at);
  const row = upRow(lay.lattice);
  const size = side === "bottom" ? restPast(row, border) : restBefore(row, border);
  return { size, seen: size };
}

/** The end pieces of the courses round a height, or of all that differ on a straight side. */
function endRests({ region, lay }: SideGround, side: Side, at: Nm | null): Rest[] {
  const { lattice, courses } = lay;
  const y = at ?? region.bounds.bottom;
  const nearest = Math.floor((y - lattice.y) / moduleUp(lattice)) + 1;
  const last = Math.max(1, courses.length - lattice.q + 1);
  const first = at === null ? 1 : Math.min(Math.max(nearest, 1), last);
  const told = courses.slice(first - 1, first - 1 + lattice.q);
  return told.map(({ number }) => {
    const row = acrossRow(lattice, number);
    const border = valueAt(side === "left" ? region.left : region.right, y);
    const hidden = side === "left" ? region.hiddenLeft : region.hiddenRight;
    if (side === "left") {
      const cover = hidden ? Math.max(0, valueAt(hidden, y) - border) : 0;
      const size = restPast(row, border);
      return { size, seen: Math.max(0, size - cover) };
    }
    const cover = hidden ? Math.max(0, border - valueAt(hidden, y)) : 0;
    const size = restBefore(row, border);
    return { size, seen: Math.max(0, size - cover) };
  });
}
