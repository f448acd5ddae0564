import type { Nm } from "../measure/index.js";
import type { Lay, Opening, Plan, Wall } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import { EarlierLayout } from "./earlier-layout.js";
import { courseShift, latticeOf } from "./lattice.js";
import { goesStraightOn, inCourseOrder, inPlacingOrder } from "./lay-order.js";
import {
  innerSides,
  layRegion,
  type LayPlot,
  type Placed,
  placedBy,
  standOf,
  startRegion,
} from "./lay-region.js";
import { layPieces } from "./pieces.js";
import { regionOf } from "./region.js";
import { isSet, setLattice } from "./set-stand.js";
import type { Lattice, Region, SetStand, SolvedLay, SolvedWall } from "./solved.js";
import { acrossOrigin, upOrigin } from "./start.js";
import { layInsides } from "./insides/lay-insides.js";
import { layFrame } from "./trim/frame.js";
import { layFreeEdges } from "./trim/free-edge.js";

/** Says how a lay starts, where it has its place. */
export type Starting = (plot: LayPlot) => Chosen;

/** A lay without its place in the numbering of the wall's courses. */
type Unnumbered = Omit<SolvedLay, "idPrefix" | "below">;

/** Lays a wall whose lays start as `starting` says: its region, pieces and trims; what it shares with `earlier` is that. */
export function layWall(
  plan: Plan,
  wall: Wall,
  starting: Starting,
  earlier = EarlierLayout.NONE,
): SolvedWall {
  const laying: Laying = { laid: new Map(), placed: [], starting, earlier };
  for (const lay of inPlacingOrder(wall.lays)) layNext(plan, wall, lay, laying);
  const lays = numbered(wall, laying.laid);
  const joint = lays[0]?.joint ?? 0;
  const region = regionOf(plan, wall, joint);
  const trims = earlier.trimsOf({ wall, region, lays }) ?? trimsOf(wall, region, lays, joint);
  const insides = layInsides(plan, wall, lays, earlier);
  return { wall, region, lays, trims, insides, refused: null };
}

/** Where a lay of a wall is to be laid once those that have their places before it are, as `starting` says. */
export function plotFor(plan: Plan, wall: Wall, name: string, starting: Starting): LayPlot {
  const laying: Laying = { laid: new Map(), placed: [], starting, earlier: EarlierLayout.NONE };
  const order = inPlacingOrder(wall.lays);
  const last = order.findIndex((lay) => lay.name === name);
  for (const lay of order.slice(0, last)) layNext(plan, wall, lay, laying);
  const lay = order[last]!;
  return { plan, wall, lay: startedLay(lay, laying.laid), placed: laying.placed };
}

/** What of a wall is laid so far. */
interface Laying {
  readonly laid: Map<Lay, Unnumbered>;
  readonly placed: Placed[];
  readonly starting: Starting;
  readonly earlier: EarlierLayout;
}

function layNext(plan: Plan, wall: Wall, lay: Lay, laying: Laying): void {
  const { laid, placed, starting, earlier } = laying;
  const plot: LayPlot = { plan, wall, lay: startedLay(lay, laid), placed: [...placed] };
  const after = coursesOf(goesOnFrom(lay, laid));
  const one: Unnumbered = { ...layOne(plot, starting(plot), after, earlier), lay };
  laid.set(lay, one);
  placed.push(placedBy(lay, one));
}

function startedLay(lay: Lay, laid: ReadonlyMap<Lay, Unnumbered>): Lay {
  const from = goesOnFrom(lay, laid);
  const jointed = withBlocksJoint(lay, laid);
  return from ? goneOn(jointed, from) : jointed;
}

/** A block states one joint for all its tiles: where it is a range, they get the one that its first lay got. */
function withBlocksJoint(lay: Lay, laid: ReadonlyMap<Lay, Unnumbered>): Lay {
  const isRange = ({ joint: { min, max } }: Lay) => min < max;
  const first = [...laid.values()].find(
    (each) => each.lay.origin === lay.origin && isRange(each.lay),
  );
  if (!first || !isRange(lay)) return lay;
  return { ...lay, joint: { ...lay.joint, min: first.joint, max: first.joint } };
}

function goesOnFrom(lay: Lay, laid: ReadonlyMap<Lay, Unnumbered>): Unnumbered | undefined {
  return [...laid.values()].find((each) => each.lay.name === lay.goesOnFrom);
}

/** How many courses of a bond there are up to a lay's last one. */
function coursesOf(from: Unnumbered | undefined): number {
  return from ? (from.lattice.after ?? 0) + from.courses.length : 0;
}

/** `after`: how many courses of its bond are under the lay's first one. */
function layOne(plot: LayPlot, chosen: Chosen, after: number, earlier: EarlierLayout): Unnumbered {
  const { plan, wall, lay } = plot;
  const { joint, across, up, choice } = chosen;
  const region = layRegion(plot, joint);
  const stand = standOf(plot, joint);
  const own = startOf(plot, chosen, stand);
  const start = after > 0 ? { ...own, after } : own;
  const whole = regionOf(plan, wall, joint);
  const inner = innerSides(region, whole);
  const pieces = earlier.piecesOf(region, start) ?? layPieces(region, start);
  return { lay, stand, region, inner, joint, across, up, ...pieces, choice };
}

function startOf(plot: LayPlot, { joint, across, up }: Chosen, stand: SetStand | null): Lattice {
  const { wall, lay } = plot;
  const ground = { wall, region: startRegion(plot, joint), lay, joint };
  const x = acrossOrigin(ground, across);
  if (stand && isSet(lay)) return setLattice({ ...ground, lay }, stand, x);
  return latticeOf(lay, joint, x, upOrigin(ground, up));
}

/** The lay with its tiles where those of the lay that it goes on from would be in the course after its last. */
function goneOn(lay: Lay, from: Unnumbered): Lay {
  const left = from.lattice.x + courseShift(from.lattice, from.courses.length + 1);
  // The middle of an odd face is rounded so that the tile's left edge comes out exact again.
  const half =
    left < 0 ? Math.ceil(lay.tile.face.across / 2) : Math.floor(lay.tile.face.across / 2);
  return { ...lay, across: { kind: "tile", centre: { on: "place", x: left + half } } };
}

function numbered(wall: Wall, laid: ReadonlyMap<Lay, Unnumbered>): SolvedLay[] {
  const below = new Map<Lay, number>();
  return inCourseOrder(wall).flatMap(({ lay, on, idPrefix }) => {
    const one = laid.get(lay)!;
    const under = on ? below.get(on)! + laid.get(on)!.courses.length : 0;
    below.set(lay, under);
    // Where all courses of a lay are set, nothing is over them.
    if (on && goesStraightOn(lay, on) && one.pieces.count === 0) return [];
    return [{ ...one, idPrefix, below: under }];
  });
}

/** An opening's frame has the joint of the lay round it. */
function trimsOf(
  wall: Wall,
  region: Region<Opening>,
  lays: readonly SolvedLay[],
  joint: Nm,
): SolvedWall["trims"] {
  const frames = wall.openings.flatMap((opening) => {
    const round = lays.find((lay) => lay.region.takeaways.some((each) => each.opening === opening));
    const { bottom } = round?.region ?? region;
    return layFrame(opening, { bottom, steps: wall.steps, joint: round?.joint ?? joint });
  });
  return [...frames, ...layFreeEdges(wall, region, joint)];
}
