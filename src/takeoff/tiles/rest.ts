import type { Nm } from "../../measure/index.js";
import type { Box } from "../../solver/index.js";
import type { Pose } from "./demand.js";
import { ALL_EDGES, EDGE, hasEdges, type Edges } from "./edges.js";

/** A rectangle that is left of a tile, and which of its edges are the tile's own. */
export interface Rest {
  /** The tile's number. */
  readonly tile: number;
  /** Within the tile's face. */
  readonly box: Box;
  readonly own: Edges;
}

/** Which of the two cuts that free a piece goes first, from edge to edge of the rest. */
export type FirstCut = "upright" | "level";

/** What the saw takes in one cut. */
export interface Kerf {
  readonly width: Nm;
  readonly length: Nm;
}

/** A rest after a piece was cut from it. */
export interface Parted {
  /** Where the piece lay. */
  readonly box: Box;
  readonly rests: readonly Rest[];
  readonly kerfs: readonly Kerf[];
}

export const widthOf = ({ box }: Rest): Nm => box.right - box.left;
export const heightOf = ({ box }: Rest): Nm => box.top - box.bottom;

/** Whether a piece can be cut from a rest in this pose, with the edges it needs. */
export function fits(pose: Pose, rest: Rest): boolean {
  const [width, height] = [widthOf(rest), heightOf(rest)];
  if (!hasEdges(rest.own, pose.needs) || pose.width > width || pose.height > height) return false;
  const isAcross = hasEdges(pose.needs, EDGE.left | EDGE.right);
  const isUp = hasEdges(pose.needs, EDGE.bottom | EDGE.top);
  return (!isAcross || pose.width === width) && (!isUp || pose.height === height);
}

/**
 * Cuts a piece from a corner of a rest that fits it: one cut from edge to edge of the rest, then one
 * from edge to edge of what holds the piece. A cut takes the kerf, or what little is left beside it.
 */
export function partRest(rest: Rest, pose: Pose, first: FirstCut, kerf: Nm): Parted {
  const { box: r } = rest;
  const atLeft = isAtLow(pose.needs, rest.own, EDGE.left, EDGE.right);
  const atBottom = isAtLow(pose.needs, rest.own, EDGE.bottom, EDGE.top);
  const left = atLeft ? r.left : r.right - pose.width;
  const bottom = atBottom ? r.bottom : r.top - pose.height;
  const box = { left, bottom, right: left + pose.width, top: bottom + pose.height };
  const beside = widthOf(rest) - pose.width;
  const over = heightOf(rest) - pose.height;
  // The first cut goes through the whole rest, the second only through the part with the piece.
  const { bottom: columnBottom, top: columnTop } = first === "upright" ? r : box;
  const { left: rowLeft, right: rowRight } = first === "upright" ? box : r;
  const rests: Rest[] = [];
  if (beside > kerf) {
    const [from, to] = atLeft ? [box.right + kerf, r.right] : [r.left, box.left - kerf];
    rests.push(restAt(rest, { left: from, bottom: columnBottom, right: to, top: columnTop }));
  }
  if (over > kerf) {
    const [from, to] = atBottom ? [box.top + kerf, r.top] : [r.bottom, box.bottom - kerf];
    rests.push(restAt(rest, { left: rowLeft, bottom: from, right: rowRight, top: to }));
  }
  const kerfs: Kerf[] = [];
  if (beside > 0) {
    kerfs.push({ width: Math.min(kerf, beside), length: columnTop - columnBottom });
  }
  if (over > 0) kerfs.push({ width: Math.min(kerf, over), length: rowRight - rowLeft });
  return { box, rests, kerfs };
}

/**
 * Which end of a rest a piece is cut from: the one it needs; else the one that is no edge of the tile,
 * so that those stay for pieces that need them.
 */
function isAtLow(needs: Edges, own: Edges, low: Edges, high: Edges): boolean {
  if (hasEdges(needs, low)) return true;
  if (hasEdges(needs, high)) return false;
  return !hasEdges(own, low) || hasEdges(own, high);
}

/** What is left of a rest within a box: it keeps the tile's edges that it still reaches. */
function restAt({ tile, box: whole, own }: Rest, box: Box): Rest {
  let reached = ALL_EDGES;
  if (box.left !== whole.left) reached &= ~EDGE.left;
  if (box.right !== whole.right) reached &= ~EDGE.right;
  if (box.bottom !== whole.bottom) reached &= ~EDGE.bottom;
  if (box.top !== whole.top) reached &= ~EDGE.top;
  return { tile, box, own: own & reached };
}
