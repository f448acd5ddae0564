import type { Nm } from "../../measure/index.js";
import type { Cutting } from "./cutting.js";
import type { Demand, Pose } from "./demand.js";
import { EDGE, type Edges } from "./edges.js";
import { type Pair, handOver, shareOut } from "./hand-over.js";
import type { Kind, Wanted, Wants } from "./kinds.js";
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

/** How the pieces of a kind are ends. */
interface EndKind {
  readonly size: Nm;
  /** How one lies at the tile's left or bottom end, and at the other; null where it can't. */
  readonly low: Pose | null;
  readonly high: Pose | null;
}

interface EndDemand extends EndKind {
  readonly demand: Demand;
  readonly course: number;
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
  readonly left: readonly Wanted[];
}

/**
 * Cuts the pieces that take a tile for themselves, and the ends: crosscuts and rips that need one end
 * of a tile, so that at most two share one. As many share as can.
 */
export function cutEnds(cutting: Cutting, { pieces, kinds }: Wants): CutEnds {
  const { across, up } = cutting.face;
  let whole = 0;
  const sized: Wanted[] = [];
  for (const piece of pieces) {
    const { width, height } = piece.demand;
    if (width !== across || height !== up) sized.push(piece);
    else {
      cutAlone(cutting, piece.demand);
      whole++;
    }
  }
  const crosscuts = cutDirection(cutting, { pieces: sized, kinds }, CROSSCUTS);
  const rips = cutDirection(cutting, { pieces: crosscuts.left, kinds }, RIPS);
  return {
    tiles: { whole, crosscuts: crosscuts.tiles, rips: rips.tiles },
    left: rips.left,
  };
}

function cutAlone(cutting: Cutting, demand: Demand): void {
  const pose: Pose = { ...demand, turns: 0 };
  cutting.cut(cutting.openTile(), demand, pose, "upright");
}

/** Those kinds that are ends in a direction. */
function endsOf(kinds: readonly Kind[], direction: Direction): ReadonlyMap<Kind, EndKind> {
  const ends = new Map<Kind, EndKind>();
  for (const kind of kinds) {
    const low = kind.poses.find(({ needs }) => needs === direction.low) ?? null;
    const high = kind.poses.find(({ needs }) => needs === direction.high) ?? null;
    const pose = low ?? high;
    if (!pose) continue;
    ends.set(kind, { size: direction.first === "upright" ? pose.width : pose.height, low, high });
  }
  return ends;
}

function cutDirection(
  cutting: Cutting,
  { pieces, kinds }: Wants,
  direction: Direction,
): { readonly tiles: number; readonly left: readonly Wanted[] } {
  const { first } = direction;
  const endKinds = endsOf(kinds, direction);
  const ends: EndDemand[] = [];
  const left: Wanted[] = [];
  for (const piece of pieces) {
    const end = endKinds.get(piece.kind);
    if (end) ends.push({ demand: piece.demand, course: piece.demand.course, ...end });
    else left.push(piece);
  }
  const pairs = pairsOf(cutting, ends, first);
  for (const pair of pairs) cutPair(cutting, pair, first);
  const shared = new Set(pairs.flat());
  for (const end of ends) {
    if (shared.has(end)) continue;
    const { demand, low, high } = end;
    const rests = cutting.cut(cutting.openTile(), demand, (low ?? high)!, first);
    for (const rest of rests) cutting.shelf.lay(rest);
  }
  return { tiles: ends.length - pairs.length, left };
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
