import { doubleArea, type Ring, type Shape } from "../shape.js";
import { cutOff } from "./cut-off.js";
import { findFaces, type Faces } from "./faces.js";
import { buildPlanarGraph, type PlanarGraph, type Role } from "./planar-graph.js";
import { contains, tidyRing } from "./ring.js";

/**
 * What is left of a shape when the obstacles are taken away: its connected parts, the lowest (then
 * leftmost) first. Obstacles are anticlockwise rings and may overlap each other.
 */
export function subtract(subject: Shape, obstacles: readonly Ring[]): Shape[] {
  const dx = subject.outline[0]!;
  const dy = subject.outline[1]!;
  // Near the origin products stay small, so that most turns need no whole-number arithmetic.
  const near = (ring: Ring) => shifted(ring, -dx, -dy);
  const whole = [subject.outline, ...subject.holes].map(near);
  const rings = ringsLeft(whole, obstacles.map(near));
  return assemble(rings.map((ring) => shifted(ring, dx, dy)));
}

function ringsLeft(whole: readonly Ring[], taken: readonly Ring[]): Ring[] {
  const bitten = whole.length === 1 && taken.length === 1 ? cutOff(whole[0]!, taken[0]!) : null;
  if (bitten) return [tidyRing(bitten)].filter((ring) => ring !== null);
  const graph = buildPlanarGraph([
    ...whole.map((ring): Role => ({ ring, of: "subject" })),
    ...taken.map((ring): Role => ({ ring, of: "obstacle" })),
  ]);
  return boundaryRings(graph, findFaces(graph));
}

function shifted(ring: Ring, dx: number, dy: number): number[] {
  return ring.map((value, i) => value + (i % 2 === 0 ? dx : dy));
}

/** The rings between what is kept and what is not, kept side on the left. */
function boundaryRings(graph: PlanarGraph, faces: Faces): Ring[] {
  const kept = (h: number) => {
    const winding = faces.winding[faces.faceOf[h]!]!;
    return winding.subject > 0 && winding.obstacle <= 0;
  };
  const isBoundary = (h: number) => kept(h) && !kept(h ^ 1);
  const done = new Set<number>();
  const rings: Ring[] = [];
  for (let start = 0; start < graph.from.length; start++) {
    if (done.has(start) || !isBoundary(start)) continue;
    const ring: number[] = [];
    let h = start;
    do {
      done.add(h);
      ring.push(graph.x[graph.from[h]!]!, graph.y[graph.from[h]!]!);
      h = graph.next[h]!;
      // Inside the kept part, turn round the vertex until its border is met.
      while (kept(h ^ 1)) h = graph.next[h ^ 1]!;
    } while (h !== start && !done.has(h));
    const tidy = tidyRing(ring);
    if (tidy) rings.push(tidy);
  }
  return rings;
}

/** Gives each hole to the smallest outline round it. */
function assemble(rings: readonly Ring[]): Shape[] {
  const measured = rings.map((ring) => ({ ring, area: doubleArea(ring), holes: [] as Ring[] }));
  const outlines = measured
    .filter(({ area }) => area > 0n)
    .sort((a, b) => (a.area < b.area ? -1 : a.area > b.area ? 1 : 0));
  for (const { ring: hole, area } of measured) {
    if (area < 0n)
      outlines.find(({ ring }) => contains(ring, hole[0]!, hole[1]!))?.holes.push(hole);
  }
  return outlines
    .map(({ ring, holes }) => ({ outline: ring, holes }))
    .sort((a, b) => a.outline[1]! - b.outline[1]! || a.outline[0]! - b.outline[0]!);
}
