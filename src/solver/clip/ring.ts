import { doubleArea, type Ring } from "../shape.js";
import { crossSign } from "./turn.js";

/** Whether a place that is on no edge of the ring lies inside it. */
export function contains(ring: Ring, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    if (passesLeftOf(ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!, x, y)) inside = !inside;
  }
  return inside;
}

/** Whether the edge from a to b crosses the level ray that runs left from a place. */
export function passesLeftOf(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  x: number,
  y: number,
): boolean {
  if (ay > y === by > y) return false;
  const side = crossSign(bx - ax, by - ay, x - ax, y - ay);
  return by > ay ? side < 0 : side > 0;
}

/**
 * The ring without points on straight runs, begun at its lowest, then leftmost corner; null when
 * nothing of any area is left.
 */
export function tidyRing(ring: Ring): Ring | null {
  const corners: number[] = [];
  const n = ring.length;
  let turns = 0;
  for (let i = 0; i < n; i += 2) {
    const p = corners.length >= 2 ? corners.length - 2 : -1;
    const ax = p >= 0 ? corners[p]! : ring[n - 2]!;
    const ay = p >= 0 ? corners[p + 1]! : ring[n - 1]!;
    const j = (i + 2) % n;
    const x = ring[i]!;
    const y = ring[i + 1]!;
    const turn = crossSign(x - ax, y - ay, ring[j]! - x, ring[j + 1]! - y);
    if (turn !== 0) corners.push(x, y);
    turns += turn;
  }
  // What turns the same way at all its corners has an area.
  const turnsOneWay = 2 * Math.abs(turns) === n;
  if (corners.length < 6 || (!turnsOneWay && doubleArea(corners) === 0n)) return null;
  return fromLowest(corners);
}

/** The ring, begun at its lowest, then leftmost corner. */
export function fromLowest(ring: Ring): Ring {
  let first = 0;
  for (let i = 2; i < ring.length; i += 2) {
    const lower = ring[i + 1]! - ring[first + 1]!;
    if (lower < 0 || (lower === 0 && ring[i]! < ring[first]!)) first = i;
  }
  return [...ring.slice(first), ...ring.slice(0, first)];
}
