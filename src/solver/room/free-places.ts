import type { Nm } from "../../measure/index.js";
import type { Range } from "../../model/index.js";
import { offsFrom, offsTo } from "../choose/conditions.js";
import type { Axis } from "../choose/field.js";
import type { WallFields } from "./wall-fields.js";

/** One direction of what an opening takes: its edges, as far before and behind its own place. */
export interface Reaching {
  /** How far what it takes begins before its place. */
  readonly before: Nm;
  /** How long what it takes is. */
  readonly length: Nm;
  /** The opening's own length. */
  readonly size: Nm;
}

/**
 * The places in a range at which an edge of what an opening takes critically meets the tiles of rows
 * from these origins. Between two of them nothing changes but how large cuts are.
 */
export function placesOnTiles(
  range: Range,
  { before, length }: Reaching,
  axis: Axis,
  origins: readonly Nm[],
): Nm[] {
  const places = new Set<Nm>([range.min, range.max]);
  for (const origin of origins) {
    for (const off of offsTo(axis)) addEach(places, range, origin + off + before, axis.module);
    for (const off of offsFrom(axis)) {
      addEach(places, range, origin + off - length + before, axis.module);
    }
  }
  return [...places].sort((a, b) => a - b);
}

/** The places at which an opening's middle is that of a tile or a joint. */
export function placesOnMiddles(
  range: Range,
  { size }: Reaching,
  { face, module }: Axis,
  origin: Nm,
): Nm[] {
  const places = new Set<Nm>();
  for (const middle of [2 * origin + face, 2 * origin + face + module]) {
    for (const half of [Math.floor((middle - size) / 2), Math.ceil((middle - size) / 2)]) {
      addEach(places, range, half, module);
    }
  }
  return [...places];
}

/**
 * The places at which what an opening takes critically stands to edges that are where they are, wherever
 * the tiles are: a piece between them is as wide as one of these sizes.
 */
export function placesByEdges(
  range: Range,
  { before, length }: Reaching,
  sizes: readonly Nm[],
  edges: readonly Nm[],
): Nm[] {
  const places = new Set<Nm>([range.min, range.max]);
  const gaps = new Set([0, ...sizes]);
  for (const edge of edges) {
    for (const gap of gaps) {
      for (const at of [edge + gap + before, edge - gap - length + before]) {
        if (range.min < at && at < range.max) places.add(at);
      }
    }
  }
  return [...places].sort((a, b) => a - b);
}

/** The places that bring a lattice which goes with the opening to these origins. */
export function placesTied(range: Range, from: Nm, module: Nm, origins: readonly Nm[]): Nm[] {
  const places = new Set<Nm>([range.min, range.max]);
  for (const origin of origins) addEach(places, range, range.min + origin - from, module);
  return [...places].sort((a, b) => a - b);
}

/** What an opening takes in a direction, seen from its own place. */
export function reachingOf(
  fields: Pick<WallFields, "wall" | "boxOf">,
  i: number,
  direction: "across" | "up",
): Reaching {
  const { at, size } = fields.wall.openings[i]!;
  const box = fields.boxOf(i);
  return direction === "across"
    ? { before: at.x - box.left, length: box.right - box.left, size: size.across }
    : { before: at.y - box.bottom, length: box.top - box.bottom, size: size.up };
}

function addEach(places: Set<Nm>, { min, max }: Range, place: Nm, module: Nm): void {
  const first = place + Math.ceil((min - place) / module) * module;
  for (let at = first; at <= max; at += module) places.add(at);
}
