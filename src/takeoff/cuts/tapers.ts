import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { type Box, overlaps, pieceBounds, type Ring, type SolvedLay } from "../../solver/index.js";
import type { Taper } from "../takeoff.js";
import { alphabetical } from "../alphabetical.js";
import { biting, isRim } from "./holes.js";
import { riserBites } from "./riser-bites.js";

type Place = readonly [x: Nm, y: Nm];

/**
 * Where a piece is cut neither square nor round: its sloped edges, and level or upright ones that lie
 * inside its bounds because the side of the wall bends. Left to right or upwards along each side.
 */
export function tapersOf(lay: SolvedLay, i: number): Taper[] {
  const shape = lay.pieces.shapes.get(i);
  if (!shape) return [];
  const box = pieceBounds(lay.pieces, i);
  const rounds = biting(lay, i);
  const { takeaways, steps } = lay.region;
  const openings = [
    ...[...takeaways.map((taken) => taken.box), ...steps].filter((b) => overlaps(b, box)),
    ...riserBites(lay.region, box),
  ];
  const tapers: Taper[] = [];
  eachEdge(shape.outline, (k, from, to) => {
    if (isRim(rounds, shape.outline, k)) return;
    if (isOnBox(box, from, to) || openings.some((opening) => isOnBox(opening, from, to))) return;
    tapers.push(taperOf(box, from, to));
  });
  return tapers.sort((a, b) => alphabetical(a.side, b.side) || a.from - b.from);
}

function eachEdge(ring: Ring, see: (k: number, from: Place, to: Place) => void): void {
  for (let k = 0; k < ring.length; k += 2) {
    const next = (k + 2) % ring.length;
    see(k, [ring[k]!, ring[k + 1]!], [ring[next]!, ring[next + 1]!]);
  }
}

/** Whether an edge runs along a side of a box. */
function isOnBox(box: Box, [ax, ay]: Place, [bx, by]: Place): boolean {
  if (ax === bx) return ax === box.left || ax === box.right;
  if (ay === by) return ay === box.bottom || ay === box.top;
  return false;
}

/** An outline runs anticlockwise, so the way an edge goes tells which side of the piece it bounds. */
function taperOf(box: Box, [ax, ay]: Place, [bx, by]: Place): Taper {
  const side = sideOf(bx - ax, by - ay);
  switch (side) {
    case "bottom":
      return taper(side, ax - box.left, bx - box.left, box.top - ay, box.top - by);
    case "top":
      return taper(side, bx - box.left, ax - box.left, by - box.bottom, ay - box.bottom);
    case "right":
      return taper(side, ay - box.bottom, by - box.bottom, ax - box.left, bx - box.left);
    case "left":
      return taper(side, by - box.bottom, ay - box.bottom, box.right - bx, box.right - ax);
  }
}

function taper(side: Side, from: Nm, to: Nm, first: Nm, last: Nm): Taper {
  return { side, from, to, first, last };
}

function sideOf(dx: Nm, dy: Nm): Side {
  if (Math.abs(dx) >= Math.abs(dy)) return dx > 0 ? "bottom" : "top";
  return dy > 0 ? "right" : "left";
}
