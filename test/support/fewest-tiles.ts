import { type Demand, type Pose, posesOf } from "../../src/takeoff/tiles/demand.js";
import { ALL_EDGES, EDGE, type Edges } from "../../src/takeoff/tiles/edges.js";
import type { Face } from "../../src/takeoff/tiles/face.js";
import type { Random } from "./random.js";

/**
 * The fewest tiles that a few pieces can be cut from, by trying every way: every cut from edge to edge
 * at every whole place, every share of the pieces on its two sides. Sizes have to be small numbers.
 */
export function fewestTiles(face: Face, demands: readonly Demand[]): number {
  const poses = demands.map((demand) => posesOf(demand, face));
  const known = new Map<string, boolean>();
  const all = (1 << demands.length) - 1;
  const fewest = [0];
  for (let set = 1; set <= all; set++) {
    fewest[set] = Infinity;
    for (let part = set; part > 0; part = (part - 1) & set) {
      const rest = fewest[set ^ part]!;
      if (rest + 1 >= fewest[set]! || !canCut(part, face.across, face.up, ALL_EDGES)) continue;
      fewest[set] = rest + 1;
    }
  }
  return fewest[all]!;

  function canCut(set: number, width: number, height: number, own: Edges): boolean {
    if (set === 0) return true;
    if (width <= 0 || height <= 0) return false;
    const key = `${set} ${width} ${height} ${own}`;
    const answer = known.get(key) ?? searchCuts(set, width, height, own);
    known.set(key, answer);
    return answer;
  }

  function searchCuts(set: number, width: number, height: number, own: Edges): boolean {
    if ((set & (set - 1)) === 0) {
      return poses[Math.log2(set)]!.some((pose) => suits(pose, width, height, own));
    }
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      const other = set ^ part;
      for (let x = 1; x < width - face.kerf; x++) {
        const left = canCut(part, x, height, own & ~EDGE.right);
        if (left && canCut(other, width - x - face.kerf, height, own & ~EDGE.left)) return true;
      }
      for (let y = 1; y < height - face.kerf; y++) {
        const below = canCut(part, width, y, own & ~EDGE.top);
        if (below && canCut(other, width, height - y - face.kerf, own & ~EDGE.bottom)) return true;
      }
    }
    return false;
  }
}

function suits(pose: Pose, width: number, height: number, own: Edges): boolean {
  if ((pose.needs & ~own) !== 0 || pose.width > width || pose.height > height) return false;
  const across = EDGE.left | EDGE.right;
  const up = EDGE.bottom | EDGE.top;
  return (
    ((pose.needs & across) !== across || pose.width === width) &&
    ((pose.needs & up) !== up || pose.height === height)
  );
}

/** A few pieces of a small tile, of all sorts that a wall may ask for. */
export function randomDemands(random: Random): { readonly face: Face; readonly demands: Demand[] } {
  const across = random.integer(4, 12);
  const up = random.chance(0.3) ? across : random.integer(4, 10);
  const face: Face = { across, up, directional: random.chance(0.5), kerf: random.integer(0, 2) };
  const demands = Array.from({ length: random.integer(1, 5) }, (_, n): Demand => {
    const needs = random.integer(0, ALL_EDGES);
    const spansAcross = (needs & EDGE.left) !== 0 && (needs & EDGE.right) !== 0;
    const spansUp = (needs & EDGE.bottom) !== 0 && (needs & EDGE.top) !== 0;
    return {
      label: `p${n}`,
      course: random.integer(1, 3),
      width: spansAcross ? across : random.integer(1, across),
      height: spansUp ? up : random.integer(1, up),
      needs,
    };
  });
  return { face, demands };
}
