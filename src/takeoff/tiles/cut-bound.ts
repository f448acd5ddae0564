import type { Nm } from "../../measure/index.js";
import { AreaBound } from "./area-bound.js";
import { couldShare } from "./could-share.js";
import type { EndTiles } from "./cut-ends.js";
import type { Pose } from "./demand.js";
import { edgeBound } from "./edge-bound.js";
import { EDGE, hasEdges } from "./edges.js";
import type { Face } from "./face.js";
import type { Kind } from "./kinds.js";
import { counted, EFFORT, thresholds } from "./scales.js";

/**
 * How many tiles it takes at least to cut these pieces: the best of several bounds. `ends` are the
 * fewest that whole-sized pieces and ends take. `enough` is as many as are known to do: where a bound
 * comes to that no other can come to more.
 */
export function cutBound(
  face: Face,
  kinds: readonly Kind[],
  ends: EndTiles,
  enough = Infinity,
): number {
  const areas = new AreaBound(face, kinds);
  const bounds = [
    () => areas.coarsest(),
    () => spanBound(face, kinds, ends),
    () => edgeBound(face, kinds),
    (known: number) => areas.best(known, enough),
  ];
  return bounds.reduce(
    (known, bound) => (known < enough ? Math.max(known, bound(known)) : known),
    0,
  );
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
  const withUpright = edgeBound(face, [...upright, ...apartFrom(face, others, level)]);
  const withLevel = edgeBound(face, [...level, ...apartFrom(face, others, upright)]);
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
