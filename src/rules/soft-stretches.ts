import type { Nm } from "../measure/index.js";
import { softJoints, type SoftRun, type SolvedLay, type SolvedWall } from "../solver/index.js";

/** An end of a stretch: a soft joint, or where the tile ends. */
export interface StretchEnd {
  readonly at: Nm;
  /** null where the tile ends. */
  readonly joint: SoftRun | null;
}

/** Tile from one soft joint to the next, or to its end. */
export interface Stretch {
  readonly way: "wide" | "high";
  readonly from: StretchEnd;
  readonly to: StretchEnd;
}

export function stretchLength({ from, to }: Pick<Stretch, "from" | "to">): Nm {
  return to.at - from.at;
}

/** What of a lay a way across the wall sees: along it, and beside it. */
interface Extent {
  readonly along: readonly [from: Nm, to: Nm];
  readonly beside: readonly [from: Nm, to: Nm];
}

/**
 * How wide, or how high, the tile of a wall is between the soft joints that it is stated to have, at each height (place
 * across) where that differs. A joint that an opening interrupts goes on at its other side; openings end no stretch.
 */
export function softStretches(wall: SolvedWall, way: Stretch["way"]): Stretch[] {
  const extents = wall.lays.map((lay) => extentOf(lay, way));
  const joints = softJoints(wall).runs.filter(
    (run) => (run.way === "upright") === (way === "wide"),
  );
  const places = extents.flatMap(({ beside }) => beside);
  const levels = [...new Set(places)].sort((a, b) => a - b);
  const stretches = levels.slice(1).flatMap((to, i) => {
    const band = [levels[i]!, to] as const;
    const lays = extents.filter(({ beside }) => holds(beside, band));
    const parting = joints.filter(({ reach }) => holds([reach.from, reach.to], band));
    return partedBy(lays, parting).map(([start, end]) => ({ way, from: start, to: end }));
  });
  return withoutTwins(stretches);
}

function extentOf({ region: { bounds } }: SolvedLay, way: Stretch["way"]): Extent {
  const { left, right, bottom, top } = bounds;
  const [across, up] = [[left, right] as const, [bottom, top] as const];
  return way === "wide" ? { along: across, beside: up } : { along: up, beside: across };
}

function holds(outer: readonly [Nm, Nm], inner: readonly [Nm, Nm]): boolean {
  return outer[0] <= inner[0] && inner[1] <= outer[1];
}

/** The stretches of lays beside each other; from lay to lay tile goes on unless the joint between them is soft. */
function partedBy(
  lays: readonly Extent[],
  joints: readonly SoftRun[],
): (readonly [StretchEnd, StretchEnd])[] {
  const first = Math.min(...lays.map(({ along }) => along[0]));
  const last = Math.max(...lays.map(({ along }) => along[1]));
  const stretches: (readonly [StretchEnd, StretchEnd])[] = [];
  let start: StretchEnd = { at: first, joint: null };
  for (const joint of [...joints].sort((a, b) => a.from - b.from)) {
    if (joint.from <= start.at || joint.to >= last) continue;
    stretches.push([start, { at: joint.from, joint }]);
    start = { at: joint.to, joint };
  }
  if (lays.length > 0) stretches.push([start, { at: last, joint: null }]);
  return stretches;
}

function withoutTwins(stretches: readonly Stretch[]): Stretch[] {
  return stretches.filter(
    ({ from, to }, i) =>
      stretches.findIndex((other) => other.from.at === from.at && other.to.at === to.at) === i,
  );
}
