import type { Nm } from "../../measure/index.js";
import type { Cutting } from "./cutting.js";
import type { Demand, Pose } from "./demand.js";
import { hasEdges, type Edges } from "./edges.js";
import type { Wanted } from "./kinds.js";
import { type FirstCut, fits, heightOf, type Rest, widthOf } from "./rest.js";
import type { Alike, RestShelf } from "./rest-shelf.js";

/** The most kinds of rests that are weighed for one piece: keeps strange plans quick. */
const MOST_WEIGHED = 500;

/** Past so many pieces one way of packing them is tried, not all. */
const FEW = 500;

type Order = (a: Demand, b: Demand) => number;

const area = ({ width, height }: Demand) => width * height;
const longer = ({ width, height }: Demand) => Math.max(width, height);
const edges = ({ needs }: Demand) =>
  (needs & 1) + ((needs >> 1) & 1) + ((needs >> 2) & 1) + (needs >> 3);

/** In which order pieces are packed; the hard ones have to come first, and there is more than one sense of hard. */
const ORDERS: readonly Order[] = [
  (a, b) => edges(b) - edges(a) || area(b) - area(a),
  (a, b) => area(b) - area(a),
  (a, b) => longer(b) - longer(a) || area(b) - area(a),
];

/** Which cut goes first; `larger`: the one that leaves the larger rest in one piece. */
const RULES: readonly ("larger" | FirstCut)[] = ["larger", "upright", "level"];

/**
 * Cuts pieces from what is left of the tiles, and from new ones when nothing suits: the rest that is
 * filled best, cut through from edge to edge. Tries several orders and keeps the one that takes the
 * fewest tiles; stops at `bound`, below which there is none. That is asked for with the tiles that are
 * known to do, and not at all when none had to be begun.
 */
export function packRests(
  cutting: Cutting,
  pieces: readonly Wanted[],
  bound: (enough: number) => number,
): Cutting {
  if (pieces.length === 0) return cutting;
  let best: Cutting | null = null;
  for (const order of ORDERS) {
    const items = [...pieces].sort((a, b) => order(a.demand, b.demand));
    for (const rule of RULES) {
      const packed = packInOrder(cutting.copy(), items, rule);
      if (!best || packed.tiles < best.tiles) best = packed;
      if (best.tiles === cutting.tiles || pieces.length > FEW) return best;
      if (best.tiles <= bound(best.tiles)) return best;
    }
  }
  return best!;
}

function packInOrder(
  cutting: Cutting,
  items: readonly Wanted[],
  rule: "larger" | FirstCut,
): Cutting {
  const { shelf } = cutting;
  const suits = suitsSome(items);
  shelf.setAside((rest) => !suits(rest));
  for (const item of items) {
    const { demand, kind } = item;
    const spot = bestSpot(shelf, item);
    const rest = spot ? shelf.take(spot.alike) : cutting.openTile();
    const pose = spot?.pose ?? kind.poses[0]!;
    const first = rule === "larger" ? largerRest(rest, pose) : rule;
    for (const left of cutting.cut(rest, demand, pose, first)) {
      if (suits(left)) shelf.lay(left);
      else shelf.putAside(left);
    }
  }
  return cutting;
}

/** Where the least is left over, of the rests that the piece fits: the smallest of them. */
function bestSpot(
  shelf: RestShelf,
  { demand, kind }: Wanted,
): { readonly alike: Alike; readonly pose: Pose } | null {
  for (const alike of shelf.smallestOf(area(demand), MOST_WEIGHED)) {
    const pose = kind.poses.find((candidate) => fits(candidate, alike.rests[0]!));
    if (pose) return { alike, pose };
  }
  return null;
}

/** The cut that leaves the larger of the two possible large rests. */
function largerRest(rest: Rest, pose: Pose): FirstCut {
  const beside = (widthOf(rest) - pose.width) * heightOf(rest);
  const over = (heightOf(rest) - pose.height) * widthOf(rest);
  return beside >= over ? "upright" : "level";
}

/** Whether some of the pieces may fit a rest: a quick look that lets none through the net that does. */
function suitsSome(items: readonly Wanted[]): (rest: Rest) => boolean {
  const least = new Map<Edges, { width: Nm; height: Nm }>();
  for (const { needs, width, height } of items.flatMap(({ kind }) => kind.poses)) {
    const known = least.get(needs);
    least.set(needs, {
      width: Math.min(width, known?.width ?? width),
      height: Math.min(height, known?.height ?? height),
    });
  }
  const kinds = [...least];
  return (rest) =>
    kinds.some(
      ([needs, { width, height }]) =>
        hasEdges(rest.own, needs) && width <= widthOf(rest) && height <= heightOf(rest),
    );
}
