import type { Nm } from "../../measure/index.js";
import type { Cutting } from "./cutting.js";
import { type Demand, type Pose, posesOf } from "./demand.js";
import { EDGE, type Edges } from "./edges.js";
import { type Pair, handOver, shareOut } from "./hand-over.js";
import type { FirstCut } from "./rest.js";

/** Ends of courses: pieces that span a tile one way and need one of the two edges at its ends. */
interface Direction {
  readonly first: FirstCut;
  readonly low: Edges;
  readonly high: Edges;
}

const CROSSCUTS: Direction = {
  first: "upright",
  low: EDGE.left | EDGE.bottom | EDGE.top,
  high: EDGE.right | EDGE.bottom | EDGE.top,
};

const RIPS: Direction = {
  first: "level",
  low: EDGE.bottom | EDGE.left | EDGE.right,
  high: EDGE.top | EDGE.left | EDGE.right,
};

interface EndDemand {
  readonly demand: Demand;
  readonly size: Nm;
  readonly course: number;
  /** How it lies at the tile's left or bottom end, and at the other; null where it can't. */
  readonly low: Pose | null;
  readonly high: Pose | null;
}

/** How many tiles each sort of piece takes, at the least. */
export interface EndTiles {
  /** Pieces as large as a tile. */
  readonly whole: number;
  readonly crosscuts: number;
  readonly rips: number;
}

/** The tiles that ends took, and what is still to be cut. */
export interface CutEnds {
  readonly tiles: EndTiles;
  readonly left: readonly Demand[];
}

/**
 * Cuts the pieces that take a tile for themselves, and the ends: crosscuts and rips that need one end
 * of a tile, so that at most two share one. As many share as can.
 */
export function cutEnds(cutting: Cutting, demands: readonly Demand[]): CutEnds {
  const { across, up } = cutting.face;
  const isWhole = ({ width, height }: Demand) => width === across && height === up;
  const wholes = demands.filter(isWhole);
  for (const demand of wholes) cutAlone(cutting, demand);
  const sized = demands.filter((demand) => !isWhole(demand));
  const crosscuts = cutDirection(cutting, sized, CROSSCUTS);
  const rips = cutDirection(cutting, crosscuts.left, RIPS);
  return {
    tiles: { whole: wholes.length, crosscuts: crosscuts.tiles, rips: rips.tiles },
    left: rips.left,
  };
}

function cutAlone(cutting: Cutting, demand: Demand): void {
  const pose: Pose = { ...demand, turns: 0 };
  cutting.cut(cutting.openTile(), demand, pose, "upright");
}

function endOf({ face }: Cutting, demand: Demand, direction: Direction): EndDemand | null {
  const poses = posesOf(demand, face);
  const low = poses.find(({ needs }) => needs === direction.low) ?? null;
  const high = poses.find(({ needs }) => needs === direction.high) ?? null;
  const pose = low ?? high;
  if (!pose) return null;
  const size = direction.first === "upright" ? pose.width : pose.height;
  return { demand, size, course: demand.course, low, high };
}

function cutDirection(
  cutting: Cutting,
  demands: readonly Demand[],
  direction: Direction,
): { readonly tiles: number; readonly left: readonly Demand[] } {
  const { first } = direction;
  const ends = demands.flatMap((demand) => endOf(cutting, demand, direction) ?? []);
  const pairs = pairsOf(cutting, ends, first);
  for (const pair of pairs) cutPair(cutting, pair, first);
  const shared = new Set(pairs.flat());
  for (const { demand, low, high } of ends.filter((end) => !shared.has(end))) {
    const rests = cutting.cut(cutting.openTile(), demand, (low ?? high)!, first);
    for (const rest of rests) cutting.shelf.lay(rest);
  }
  const cut = new Set(ends.map(({ demand }) => demand));
  return {
    tiles: ends.length - pairs.length,
    left: demands.filter((demand) => !cut.has(demand)),
  };
}

function pairsOf(
  { face }: Cutting,
  ends: readonly EndDemand[],
  first: FirstCut,
): readonly Pair<EndDemand>[] {
  const room = (first === "upright" ? face.across : face.up) - face.kerf;
  if (!face.directional) return shareOut(ends, room);
  const atLow = ends.filter(({ low }) => low);
  const atHigh = ends.filter(({ high }) => high);
  return handOver(atLow, atHigh, room);
}

/** The one that needn't be turned for it lies at the low end. */
function cutPair(cutting: Cutting, [one, other]: Pair<EndDemand>, first: FirstCut): void {
  const isSwapped = one.low?.turns !== 0 && other.low?.turns === 0 && one.high !== null;
  const [low, high] = isSwapped ? [other, one] : [one, other];
  const [rest] = cutting.cut(cutting.openTile(), low.demand, low.low!, first);
  for (const left of cutting.cut(rest!, high.demand, high.high!, first)) cutting.shelf.lay(left);
}
