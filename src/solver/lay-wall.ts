import type { Nm } from "../measure/index.js";
import type { Lay, Plan, Side, Wall } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import { courseShift, latticeOf } from "./lattice.js";
import { inCourseOrder, inPlacingOrder } from "./lay-order.js";
import { layRegion, type LayPlot, type Placed } from "./lay-region.js";
import { layPieces } from "./pieces.js";
import { regionOf } from "./region.js";
import type { Region, SolvedLay, SolvedWall } from "./solved.js";
import { acrossOrigin, upOrigin } from "./start.js";
import { layFrame } from "./trim/frame.js";
import { layFreeEdges } from "./trim/free-edge.js";

/** Says how a lay starts, where it has its place. */
export type Starting = (plot: LayPlot) => Chosen;

/** A lay without its place in the numbering of the wall's courses. */
type Unnumbered = Omit<SolvedLay, "idPrefix" | "below">;

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** Lays a wall whose lays start as `starting` says: its region, pieces and trims. */
export function layWall(plan: Plan, wall: Wall, starting: Starting): SolvedWall {
  const laid = new Map<Lay, Unnumbered>();
  const placed: Placed[] = [];
  for (const lay of inPlacingOrder(wall.lays)) {
    const plot: LayPlot = { plan, wall, lay: goneOn(lay, laid), placed: [...placed] };
    const one: Unnumbered = { ...layOne(plot, starting(plot)), lay };
    laid.set(lay, one);
    placed.push({ lay, joint: one.joint, box: one.region.bounds });
  }
  const lays = numbered(wall, laid);
  const joint = lays[0]?.joint ?? 0;
  const region = regionOf(plan, wall, joint);
  return { wall, region, lays, trims: trimsOf(wall, region, lays, joint), refused: null };
}

function layOne(plot: LayPlot, chosen: Chosen): Unnumbered {
  const { plan, wall, lay } = plot;
  const { joint, across, up, choice } = chosen;
  const region = layRegion(plot, joint);
  const ground = { wall, region, lay, joint };
  const start = latticeOf(lay, joint, acrossOrigin(ground, across), upOrigin(ground, up));
  const whole = regionOf(plan, wall, joint);
  const inner = SIDES.filter(
    (side) => region[side] !== whole[side] && !isSame(region, whole, side),
  );
  return { lay, region, inner, joint, across, up, ...layPieces(region, start), choice };
}

/** The lay with its tiles where those of the lay that it goes on from would be in the course after its last. */
function goneOn(lay: Lay, laid: ReadonlyMap<Lay, Unnumbered>): Lay {
  const from = [...laid.values()].find((each) => each.lay.name === lay.goesOnFrom);
  if (!from) return lay;
  const left = from.lattice.x + courseShift(from.lattice, from.courses.length + 1);
  // The middle of an odd face is rounded so that the tile's left edge comes out exact again.
  const half =
    left < 0 ? Math.ceil(lay.tile.face.across / 2) : Math.floor(lay.tile.face.across / 2);
  return { ...lay, across: { kind: "tile", centre: { on: "place", x: left + half } } };
}

function isSame(a: Region, b: Region, side: Side): boolean {
  return a[side].value.join() === b[side].value.join() && a[side].at.join() === b[side].at.join();
}

function numbered(wall: Wall, laid: ReadonlyMap<Lay, Unnumbered>): SolvedLay[] {
  const below = new Map<Lay, number>();
  return inCourseOrder(wall).map(({ lay, on, idPrefix }) => {
    const one = laid.get(lay)!;
    const under = on ? below.get(on)! + laid.get(on)!.courses.length : 0;
    below.set(lay, under);
    return { ...one, idPrefix, below: under };
  });
}

/** An opening's frame has the joint of the lay round it. */
function trimsOf(
  wall: Wall,
  region: Region,
  lays: readonly SolvedLay[],
  joint: Nm,
): SolvedWall["trims"] {
  const frames = wall.openings.flatMap((opening) => {
    const round = lays.find((lay) => lay.region.takeaways.some((each) => each.opening === opening));
    return layFrame(opening, round?.region ?? region, round?.joint ?? joint);
  });
  return [...frames, ...layFreeEdges(wall, region, joint)];
}
