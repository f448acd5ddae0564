import type { Side } from "../../model/index.js";

/** Some of a rectangle's four edges: the sum of theirs. A quarter turn anticlockwise doubles each. */
export type Edges = number;

export const EDGE: Readonly<Record<Side, Edges>> = { bottom: 1, right: 2, top: 4, left: 8 };

export const ALL_EDGES: Edges = 15;

export type Turns = 0 | 1 | 2 | 3;

export function edgesOf(sides: readonly Side[]): Edges {
  return sides.reduce((sum, side) => sum | EDGE[side], 0);
}

/** The edges as they lie after quarter turns anticlockwise: what was at the right is at the top. */
export function turnedEdges(edges: Edges, turns: Turns): Edges {
  return ((edges << turns) | (edges >> (4 - turns))) & ALL_EDGES;
}

/** Whether all of `wanted` are among `edges`. */
export function hasEdges(edges: Edges, wanted: Edges): boolean {
  return (edges & wanted) === wanted;
}
