import type { Nm } from "../../measure/index.js";
import { mayLie } from "./demand.js";
import { EDGE, hasEdges, type Edges } from "./edges.js";
import type { Face } from "./face.js";
import type { Kind } from "./kinds.js";

/** What pieces take of some edges of the tiles. */
interface Taken {
  /** How many whole edges. */
  whole: number;
  /** How much from an edge's low end, and from its high end. */
  readonly low: Nm[];
  readonly high: Nm[];
}

/**
 * How many tiles it takes at least, by their edges: a piece that needs a corner takes a part of each of
 * the two edges there, and at most two such pieces share an edge, if they are short enough.
 */
export function edgeBound(face: Face, kinds: readonly Kind[]): number {
  const horizontals = [EDGE.bottom, EDGE.top].map((edge) =>
    takenOf(face, kinds, edge, EDGE.left, EDGE.right),
  );
  const verticals = [EDGE.left, EDGE.right].map((edge) =>
    takenOf(face, kinds, edge, EDGE.bottom, EDGE.top),
  );
  if (face.directional) {
    return Math.max(
      ...horizontals.map((taken) => edgesFor(taken, face.across - face.kerf)),
      ...verticals.map((taken) => edgesFor(taken, face.up - face.kerf)),
    );
  }
  if (face.across === face.up) {
    const all = together([...horizontals, ...verticals]);
    return Math.ceil(edgesForEither(all, face.across - face.kerf) / 4);
  }
  const across = edgesForEither(together(horizontals), face.across - face.kerf);
  const up = edgesForEither(together(verticals), face.up - face.kerf);
  return Math.ceil(Math.max(across, up) / 2);
}

/** What is taken of one edge as pieces are laid; a corner that may be turned takes its shorter side. */
function takenOf(face: Face, kinds: readonly Kind[], edge: Edges, low: Edges, high: Edges): Taken {
  const taken: Taken = { whole: 0, low: [], high: [] };
  const isHorizontal = edge === EDGE.bottom || edge === EDGE.top;
  const isSquare = face.across === face.up;
  for (const { demand, count } of kinds) {
    const { needs, width, height } = demand;
    if (!hasEdges(needs, edge) || !(needs & (low | high))) continue;
    if (hasEdges(needs, low | high)) {
      taken.whole += count;
      continue;
    }
    // A square tile's edges are all counted together, so that both sides are counted anyway.
    const turns = !isSquare && mayLie(demand, face);
    const laid = isHorizontal ? width : height;
    const size = turns ? Math.min(width, height) : laid;
    const ends = hasEdges(needs, low) ? taken.low : taken.high;
    for (let n = 0; n < count; n++) ends.push(size);
  }
  return taken;
}

function together(all: readonly Taken[]): Taken {
  return {
    whole: all.reduce((sum, { whole }) => sum + whole, 0),
    low: all.flatMap(({ low }) => low),
    high: all.flatMap(({ high }) => high),
  };
}

/** The fewest edges, where low ends share with high ends alone: the shortest with the longest it can. */
function edgesFor({ whole, low, high }: Taken, room: Nm): number {
  const lows = Float64Array.from(low).sort();
  const highs = Float64Array.from(high).sort();
  let pairs = 0;
  for (let k = highs.length - 1; k >= 0 && pairs < lows.length; k--) {
    if (lows[pairs]! + highs[k]! <= room) pairs++;
  }
  return whole + lows.length + highs.length - pairs;
}

/** The fewest edges, where any two ends may share one. */
function edgesForEither({ whole, low, high }: Taken, room: Nm): number {
  const ends = Float64Array.from([...low, ...high]).sort();
  let pairs = 0;
  for (let k = ends.length - 1; k > pairs; k--) {
    if (ends[pairs]! + ends[k]! <= room) pairs++;
  }
  return whole + ends.length - pairs;
}
