import { placesByEdges, reachingOf } from "./free-places.js";
import type { Settled } from "./settle.js";
import type { Fields, WallFields } from "./wall-fields.js";

/**
 * The wall with what is free in a direction at either end of its range, and where its edges stand
 * critically to others: a start may be critical for each of them.
 */
export function extremesOf(fields: WallFields, direction: "x" | "y"): Fields[] {
  const { drawn, wall, first, free } = fields;
  const settled: Settled[] = [drawn];
  const axis = direction === "x" ? "across" : "up";
  for (const i of free[direction]) {
    const range = wall.openings[i]!.free[direction]!;
    const all = placesByEdges(range, reachingOf(first.own, i, axis), first.own[axis]);
    for (const place of fields.somePlaces(all)) {
      const places = drawn.places.map((at, j) => (i === j ? { ...at, [direction]: place } : at));
      settled.push({ ...drawn, places });
    }
  }
  if (direction === "y" && wall.stop) settled.push({ ...drawn, stop: wall.stop.max });
  return settled.map((each) => fields.at(each));
}
