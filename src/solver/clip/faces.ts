import type { PlanarGraph, Winding } from "./planar-graph.js";
import { passesLeftOf } from "./ring.js";
import { crossSign } from "./turn.js";

/** The faces of a planar graph, and how often the rings wind round each. */
export interface Faces {
  /** The face on the left of each half-edge; the outside of each connected part is a face too. */
  readonly faceOf: readonly number[];
  readonly winding: readonly Winding[];
}

/** Walks the faces and carries the windings over their edges, from the outside of each part in. */
export function findFaces(graph: PlanarGraph): Faces {
  const { faceOf, first } = walkFaces(graph);
  const winding: (Winding | undefined)[] = first.map(() => undefined);
  const parts = findParts(graph);
  for (const part of parts) {
    const outside = outsideHalfEdge(graph, part);
    winding[faceOf[outside]!] = windingRound(graph, part, graph.from[outside]!);
    const open = [faceOf[outside]!];
    for (let face = open.pop(); face !== undefined; face = open.pop()) {
      for (const h of halfEdgesRound(graph, first[face]!)) {
        const across = faceOf[h ^ 1]!;
        if (winding[across] !== undefined) continue;
        winding[across] = stepped(winding[face]!, graph.step[h >> 1]!, h % 2 === 0 ? -1 : 1);
        open.push(across);
      }
    }
  }
  return { faceOf, winding: winding.map((w) => w ?? { subject: 0, obstacle: 0 }) };
}

function stepped(from: Winding, step: Winding, times: 1 | -1): Winding {
  return {
    subject: from.subject + times * step.subject,
    obstacle: from.obstacle + times * step.obstacle,
  };
}

function walkFaces({ from, next }: PlanarGraph): { faceOf: number[]; first: number[] } {
  const faceOf: number[] = new Array<number>(from.length).fill(-1);
  const first: number[] = [];
  for (let start = 0; start < from.length; start++) {
    if (faceOf[start] !== -1) continue;
    for (let h = start; faceOf[h] === -1; h = next[h]!) faceOf[h] = first.length;
    first.push(start);
  }
  return { faceOf, first };
}

function halfEdgesRound({ next }: PlanarGraph, start: number): number[] {
  const round = [start];
  for (let h = next[start]!; h !== start; h = next[h]!) round.push(h);
  return round;
}

/** The connected parts of the graph, each as the set of its half-edges. */
function findParts({ from, next }: PlanarGraph): Set<number>[] {
  const seen = new Set<number>();
  const parts: Set<number>[] = [];
  for (let start = 0; start < from.length; start++) {
    if (seen.has(start)) continue;
    const part = new Set<number>();
    const open = [start];
    for (let h = open.pop(); h !== undefined; h = open.pop()) {
      if (part.has(h)) continue;
      part.add(h);
      seen.add(h);
      open.push(h ^ 1, next[h]!);
    }
    parts.push(part);
  }
  return parts;
}

/**
 * A half-edge with the part's outside on its left. At the part's lowest, leftmost vertex every edge
 * goes up or level to the right, so the outside lies past the last of them anticlockwise.
 */
function outsideHalfEdge({ x, y, from }: PlanarGraph, part: ReadonlySet<number>): number {
  const isAfter = (h: number, g: number) => {
    const [v, w] = [from[h]!, from[g]!];
    if (y[v]! !== y[w]!) return y[v]! < y[w]!;
    if (x[v]! !== x[w]!) return x[v]! < x[w]!;
    const [hv, gv] = [from[h ^ 1]!, from[g ^ 1]!];
    return crossSign(x[gv]! - x[w], y[gv]! - y[w], x[hv]! - x[v], y[hv]! - y[v]) > 0;
  };
  return [...part].reduce((best, h) => (isAfter(h, best) ? h : best));
}

/** How often the other parts' edges wind round a vertex of this part. */
function windingRound(graph: PlanarGraph, part: ReadonlySet<number>, vertex: number): Winding {
  const { x, y, from, step } = graph;
  const px = x[vertex]!;
  const py = y[vertex]!;
  let winding: Winding = { subject: 0, obstacle: 0 };
  step.forEach((edge, k) => {
    if (part.has(2 * k)) return;
    const [a, b] = [from[2 * k]!, from[2 * k + 1]!];
    if (!passesLeftOf(x[a]!, y[a]!, x[b]!, y[b]!, px, py)) return;
    // A ring runs down on its left side: going down past a ray to the left means being inside.
    winding = stepped(winding, edge, y[b]! < y[a]! ? 1 : -1);
  });
  return winding;
}
