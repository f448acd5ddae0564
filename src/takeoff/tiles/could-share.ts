import type { Pose } from "./demand.js";
import { EDGE, type Edges, hasEdges } from "./edges.js";
import type { Face } from "./face.js";

/** Whether one tile could give both of two pieces, each held to it in one of these ways. */
export function couldShare(face: Face, one: readonly Pose[], other: readonly Pose[]): boolean {
  return one.some((a) =>
    other.some(
      (b) =>
        (a.width + b.width + face.kerf <= face.across &&
          areApart(a.needs, b.needs, EDGE.left, EDGE.right)) ||
        (a.height + b.height + face.kerf <= face.up &&
          areApart(a.needs, b.needs, EDGE.bottom, EDGE.top)),
    ),
  );
}

/** Whether two pieces with a cut between them can both have the edges that they need at its two sides. */
function areApart(one: Edges, other: Edges, low: Edges, high: Edges): boolean {
  const wantsBoth = hasEdges(one, low | high) || hasEdges(other, low | high);
  return !wantsBoth && (one & other & (low | high)) === 0;
}
