import type { Nm } from "../../measure/index.js";
import { couldShare } from "./could-share.js";
import type { EndTiles } from "./cut-ends.js";
import { type Demand, type Pose, posesOf } from "./demand.js";
import { edgeBound } from "./edge-bound.js";
import { EDGE, hasEdges } from "./edges.js";
import type { Face } from "./face.js";
import { counted, thresholds } from "./scales.js";

/** How much is weighed for a bound, in kinds of pieces times ways to count them. */
const EFFORT = 20_000;

/** Pieces of one size that need the same edges. */
interface Kind {
  readonly demand: Demand;
  readonly count: number;
  readonly poses: readonly Pose[];
}

/**
 * How many tiles it takes at least to cut these pieces: the best of several bounds. `ends` are the
 * fewest that whole-sized pieces and ends take. `enough` is as many as are known to do: where a bound
 * comes to that no other can come to more.
 */
export function cutBound(
  face: Face,
  demands: readonly Demand[],
  ends: EndTiles,
  enough = Infinity,
): number {
  const kinds = kindsOf(face, demands);
  const bounds = [
    () => spanBound(face, kinds, ends),
    () => edgeBound(face, demands),
    (known: number) => areaBound(face, kinds, known, enough),
  ];
  return bounds.reduce(
    (known, bound) => (known < enough ? Math.max(known, bound(known)) : known),
    0,
  );
}

function kindsOf(face: Face, demands: readonly Demand[]): Kind[] {
  const kinds = new Map<string, { demand: Demand; count: number; poses: readonly Pose[] }>();
  for (const demand of demands) {
    const key = `${demand.width}x${demand.height}/${demand.needs}`;
    const kind = kinds.get(key);
    if (kind) kind.count++;
    else kinds.set(key, { demand, count: 1, poses: posesOf(demand, face) });
  }
  return [...kinds.values()];
}

/**
 * What spans a tile one way shares it with nothing that spans it the other way, and with none of the
 * other pieces that are too large beside it.
 */
function spanBound(face: Face, kinds: readonly Kind[], ends: EndTiles): number {
  const { upright, level, others } = sortedOut(face, kinds);
  const widths = upright.map(({ poses, count }) => [poses.find(spansUp)!.width, count] as const);
  const heights = level.map(
    ({ poses, count }) => [poses.find(spansAcross)!.height, count] as const,
  );
  const crosscuts = Math.max(ends.crosscuts, rowBound(widths, face.across, face.kerf));
  const rips = Math.max(ends.rips, rowBound(heights, face.up, face.kerf));
  const withUpright = edgeBound(face, demandsOf([...upright, ...apartFrom(face, others, level)]));
  const withLevel = edgeBound(face, demandsOf([...level, ...apartFrom(face, others, upright)]));
  return ends.whole + Math.max(crosscuts + rips, withUpright + rips, crosscuts + withLevel);
}

/** Kinds by how they span a tile; those that are as large as one are left out. */
function sortedOut(face: Face, kinds: readonly Kind[]) {
  const upright: Kind[] = [];
  const level: Kind[] = [];
  const others: Kind[] = [];
  for (const kind of kinds) {
    const { width, height } = kind.demand;
    if (width === face.across && height === face.up) continue;
    if (kind.poses.some(spansUp)) upright.push(kind);
    else if (kind.poses.some(spansAcross)) level.push(kind);
    else others.push(kind);
  }
  return { upright, level, others };
}

const spansUp = (pose: Pose) => hasEdges(pose.needs, EDGE.bottom | EDGE.top);
const spansAcross = (pose: Pose) => hasEdges(pose.needs, EDGE.left | EDGE.right);

function demandsOf(kinds: readonly Kind[]): Demand[] {
  return kinds.flatMap(({ demand, count }) => Array<Demand>(count).fill(demand));
}

/** Those that can share a tile with none of the others; none when there are too many to look at. */
function apartFrom(face: Face, kinds: readonly Kind[], others: readonly Kind[]): readonly Kind[] {
  if (kinds.length * others.length > EFFORT) return [];
  return kinds.filter(({ poses }) => !others.some((o) => couldShare(face, poses, o.poses)));
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

/**
 * By area, each piece and the tile a kerf wider and higher, since every piece is cut from its
 * neighbour; and by what sizes count for, one way or both ways. `known` is a bound already found, and
 * no more than `enough` is looked for.
 */
function areaBound(face: Face, kinds: readonly Kind[], known: number, enough: number): number {
  const { kerf } = face;
  const [width, height] = [face.across + kerf, face.up + kerf];
  const poses = kinds.flatMap((kind) => kind.poses);
  const most = Math.floor(Math.sqrt(EFFORT / (poses.length + 1)));
  const across = countings(
    poses.map((pose) => pose.width + kerf),
    width,
    most,
  );
  const up = countings(
    poses.map((pose) => pose.height + kerf),
    height,
    most,
  );
  let bound = known;
  for (const widths of across) {
    for (const heights of up) {
      if (bound >= enough) return bound;
      // Worked out exactly only where the quick sum promises more.
      if (Math.ceil(quickSum(kinds, widths, heights) / (width * height)) <= bound) continue;
      const tile = BigInt(width) * BigInt(height);
      const tiles = (exactSum(kinds, widths, heights) + tile - 1n) / tile;
      bound = Math.max(bound, Number(tiles));
    }
  }
  return bound;
}

/** What the sizes count for, at each value of `least` where that changes. */
function countings(sizes: readonly Nm[], length: Nm, most: number): readonly (readonly Nm[])[] {
  return thresholds(sizes, length, most).map((least) =>
    sizes.map((size) => counted(size, length, least)),
  );
}

/** What all pieces count for, each in the pose that counts least; sizes are those of all kinds' poses in turn. */
function quickSum(kinds: readonly Kind[], widths: readonly Nm[], heights: readonly Nm[]): number {
  let sum = 0;
  let first = 0;
  for (const { count, poses } of kinds) {
    let least = Infinity;
    const end = first + poses.length;
    for (let k = first; k < end; k++) least = Math.min(least, widths[k]! * heights[k]!);
    sum += count * least;
    first = end;
  }
  return sum;
}

function exactSum(kinds: readonly Kind[], widths: readonly Nm[], heights: readonly Nm[]): bigint {
  let first = 0;
  return kinds.reduce((sum, { count, poses }) => {
    const areas = poses.map((_, k) => BigInt(widths[first + k]!) * BigInt(heights[first + k]!));
    first += poses.length;
    return sum + BigInt(count) * areas.reduce((a, b) => (b < a ? b : a));
  }, 0n);
}
