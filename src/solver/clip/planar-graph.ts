import type { Ring } from "../shape.js";
import { areClear, crossingOf, type Segment, segmentsOf, sideOf } from "./segment.js";
import { crossSign } from "./turn.js";

/** A ring that takes part: the shape cut from (outline and holes), or what is cut away. */
export interface Role {
  readonly ring: Ring;
  readonly of: "subject" | "obstacle";
}

/** How often the subject and the obstacles wind round a place. */
export interface Winding {
  readonly subject: number;
  readonly obstacle: number;
}

/**
 * The rings' edges, split wherever they meet, each kept once. Half-edge 2k runs along edge k, and
 * 2k + 1 back. `next` is the half-edge that follows round the face on the left.
 */
export interface PlanarGraph {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Vertex from which each half-edge starts. */
  readonly from: readonly number[];
  readonly next: readonly number[];
  /** How much more often the left side of half-edge 2k is wound round than its right side. */
  readonly step: readonly Winding[];
}

interface Edge extends Segment {
  readonly of: Role["of"];
  /** Where other edges meet it, x and y in turn. */
  readonly splits: number[];
}

/** Overlays rings: crossings become vertices, each rounded once to the nearest nanometre. */
export function buildPlanarGraph(roles: readonly Role[]): PlanarGraph {
  const edges = roles.flatMap(edgesOf);
  for (let i = 0; i < edges.length; i++) {
    for (let j = i + 1; j < edges.length; j++) meet(edges[i]!, edges[j]!);
  }
  return link(new EdgeSet(edges));
}

function edgesOf({ ring, of }: Role): Edge[] {
  return segmentsOf(ring).map((segment) => ({ ...segment, of, splits: [] }));
}

/** Notes on both edges where they touch or cross. */
function meet(s: Edge, t: Edge): void {
  if (areClear(s, t)) return;
  const ta = sideOf(s, t.ax, t.ay);
  const tb = sideOf(s, t.bx, t.by);
  const sa = sideOf(t, s.ax, s.ay);
  const sb = sideOf(t, s.bx, s.by);
  if (ta === 0) touch(s, t.ax, t.ay);
  if (tb === 0) touch(s, t.bx, t.by);
  if (sa === 0) touch(t, s.ax, s.ay);
  if (sb === 0) touch(t, s.bx, s.by);
  if (ta * tb < 0 && sa * sb < 0) cross(s, t);
}

/** A vertex on the edge's line splits it where it lies within. */
function touch(s: Edge, x: number, y: number): void {
  if (x < Math.min(s.ax, s.bx) || x > Math.max(s.ax, s.bx)) return;
  if (y < Math.min(s.ay, s.by) || y > Math.max(s.ay, s.by)) return;
  s.splits.push(x, y);
}

function cross(s: Edge, t: Edge): void {
  const { x, y } = crossingOf(s, t);
  s.splits.push(x, y);
  t.splits.push(x, y);
}

/** The split edges, equal ones merged, and those that separate nothing left out. */
class EdgeSet {
  readonly x: number[] = [];
  readonly y: number[] = [];
  readonly ends: (readonly [number, number])[] = [];
  readonly steps: Winding[] = [];
  private readonly vertices = new Map<string, number>();

  constructor(edges: readonly Edge[]) {
    const merged = new Map<string, { a: number; b: number; subject: number; obstacle: number }>();
    for (const one of edges) {
      const path = this.pathOf(one);
      for (let i = 1; i < path.length; i++) {
        const [u, v] = [path[i - 1]!, path[i]!];
        if (u === v) continue;
        const [a, b] = u < v ? [u, v] : [v, u];
        const key = `${a},${b}`;
        const edge = merged.get(key) ?? { a, b, subject: 0, obstacle: 0 };
        edge[one.of] += u < v ? 1 : -1;
        merged.set(key, edge);
      }
    }
    for (const { a, b, subject, obstacle } of merged.values()) {
      if (subject === 0 && obstacle === 0) continue;
      this.ends.push([a, b]);
      this.steps.push({ subject, obstacle });
    }
  }

  /** The vertices along an edge, in its direction. */
  private pathOf(s: Edge): number[] {
    if (s.splits.length === 0) return [this.vertex(s.ax, s.ay), this.vertex(s.bx, s.by)];
    const points: [number, number][] = [
      [s.ax, s.ay],
      [s.bx, s.by],
    ];
    for (let i = 0; i < s.splits.length; i += 2) points.push([s.splits[i]!, s.splits[i + 1]!]);
    const sx = Math.sign(s.bx - s.ax);
    const sy = Math.sign(s.by - s.ay);
    points.sort((p, q) => sx * (p[0] - q[0]) + sy * (p[1] - q[1]));
    return points.map(([x, y]) => this.vertex(x, y));
  }

  private vertex(x: number, y: number): number {
    const key = `${x},${y}`;
    const known = this.vertices.get(key);
    if (known !== undefined) return known;
    this.x.push(x);
    this.y.push(y);
    this.vertices.set(key, this.x.length - 1);
    return this.x.length - 1;
  }
}

/** Orders the half-edges round each vertex, and so round each face. */
function link({ x, y, ends, steps }: EdgeSet): PlanarGraph {
  const from: number[] = [];
  const out: number[][] = x.map(() => []);
  ends.forEach(([a, b], k) => {
    from.push(a, b);
    out[a]!.push(2 * k);
    out[b]!.push(2 * k + 1);
  });
  const dx = (h: number) => x[from[h ^ 1]!]! - x[from[h]!]!;
  const dy = (h: number) => y[from[h ^ 1]!]! - y[from[h]!]!;
  const upper = (h: number) => dy(h) > 0 || (dy(h) === 0 && dx(h) > 0);
  const anticlockwise = (g: number, h: number) => {
    if (upper(g) !== upper(h)) return upper(g) ? -1 : 1;
    return -crossSign(dx(g), dy(g), dx(h), dy(h));
  };
  const next: number[] = new Array<number>(from.length).fill(0);
  for (const around of out) {
    // Two edges follow each other either way round.
    if (around.length > 2) around.sort(anticlockwise);
    // Arriving against `around[i]`, the face on the left goes on by the next one clockwise.
    around.forEach((h, i) => {
      next[h ^ 1] = around[(i + around.length - 1) % around.length]!;
    });
  }
  return { x, y, from, next, step: steps };
}
