import type { Nm } from "../../measure/index.js";
import type { EndTiles } from "./cut-ends.js";
import { type Demand, type Pose, posesOf } from "./demand.js";
import { EDGE, hasEdges, turnedEdges } from "./edges.js";
import type { Face } from "./face.js";
import { counted, thresholds } from "./scales.js";

/** How much is weighed for a bound, in kinds of pieces times ways to count them. */
const EFFORT = 20_000;

const CORNERS = 4;

/** Pieces of one size that need the same edges. */
interface Kind {
  readonly count: number;
  readonly poses: readonly Pose[];
}

/**
 * How many tiles it takes at least to cut these pieces: the best of three bounds. `ends` are the fewest
 * that whole-sized pieces and ends take, no two of which kinds can share a tile.
 */
export function cutBound(face: Face, demands: readonly Demand[], ends: EndTiles): number {
  const kinds = kindsOf(face, demands);
  return Math.max(spanBound(face, kinds, ends), cornerBound(demands), areaBound(face, kinds));
}

function kindsOf(face: Face, demands: readonly Demand[]): Kind[] {
  const kinds = new Map<string, { count: number; poses: readonly Pose[] }>();
  for (const demand of demands) {
    const key = `${demand.width}x${demand.height}/${demand.needs}`;
    const kind = kinds.get(key);
    if (kind) kind.count++;
    else kinds.set(key, { count: 1, poses: posesOf(demand, face) });
  }
  return [...kinds.values()];
}

/** What spans a tile one way shares it with nothing that spans it the other way. */
function spanBound(face: Face, kinds: readonly Kind[], ends: EndTiles): number {
  const spansUp = (pose: Pose) => hasEdges(pose.needs, EDGE.bottom | EDGE.top);
  const spansAcross = (pose: Pose) => hasEdges(pose.needs, EDGE.left | EDGE.right);
  const widths: [Nm, number][] = [];
  const heights: [Nm, number][] = [];
  for (const { count, poses } of kinds) {
    const up = poses.find((pose) => spansUp(pose) && pose.width < face.across);
    const across = poses.find((pose) => spansAcross(pose) && pose.height < face.up);
    if (up) widths.push([up.width, count]);
    else if (across) heights.push([across.height, count]);
  }
  return (
    ends.whole +
    Math.max(ends.crosscuts, rowBound(widths, face.across, face.kerf)) +
    Math.max(ends.rips, rowBound(heights, face.up, face.kerf))
  );
}

/** How many lengths it takes at least to cut these sizes, each with its kerf. */
function rowBound(sizes: readonly (readonly [Nm, number])[], length: Nm, kerf: Nm): number {
  const whole = length + kerf;
  const all = sizes.map(([size]) => size + kerf);
  const most = Math.ceil(EFFORT / (sizes.length + 1));
  let bound = 0;
  for (const least of thresholds(all, whole, most)) {
    const sum = sizes.reduce((s, [size, n]) => s + n * counted(size + kerf, whole, least), 0);
    bound = Math.max(bound, Math.ceil(sum / whole));
  }
  return bound;
}

/** A piece that needs two edges that meet takes one of a tile's four corners. */
function cornerBound(demands: readonly Demand[]): number {
  const taken = demands.reduce((sum, { needs }) => sum + bits(needs & turnedEdges(needs, 1)), 0);
  return Math.ceil(taken / CORNERS);
}

function bits(edges: number): number {
  return (edges & 1) + ((edges >> 1) & 1) + ((edges >> 2) & 1) + (edges >> 3);
}

/**
 * By area, each piece and the tile a kerf wider and higher, since every piece is cut from its
 * neighbour; and by what sizes count for, one way or both ways.
 */
function areaBound(face: Face, kinds: readonly Kind[]): number {
  const { kerf } = face;
  const [width, height] = [face.across + kerf, face.up + kerf];
  const poses = kinds.flatMap((kind) => kind.poses);
  const most = Math.floor(Math.sqrt(EFFORT / (poses.length + 1)));
  const across = thresholds(
    poses.map((pose) => pose.width + kerf),
    width,
    most,
  );
  const up = thresholds(
    poses.map((pose) => pose.height + kerf),
    height,
    most,
  );
  const tile = BigInt(width) * BigInt(height);
  let bound = 0;
  for (const leastAcross of across) {
    for (const leastUp of up) {
      const countOf = (pose: Pose) =>
        BigInt(counted(pose.width + kerf, width, leastAcross)) *
        BigInt(counted(pose.height + kerf, height, leastUp));
      const sum = kinds.reduce((s, kind) => s + BigInt(kind.count) * least(kind, countOf), 0n);
      bound = Math.max(bound, Number((sum + tile - 1n) / tile));
    }
  }
  return bound;
}

/** What a kind counts for in the pose that counts least. */
function least({ poses }: Kind, countOf: (pose: Pose) => bigint): bigint {
  return poses.map(countOf).reduce((a, b) => (b < a ? b : a));
}
