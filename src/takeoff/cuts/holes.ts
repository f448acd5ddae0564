import type { Ring, RoundHole, SolvedLay } from "../../solver/index.js";
import type { DrilledHole } from "../takeoff.js";
import { tileFrame } from "./tile-frame.js";

/** The round holes that make an edge of a piece. */
export function biting(lay: SolvedLay, i: number): RoundHole[] {
  const shape = lay.pieces.shapes.get(i);
  if (!shape) return [];
  return lay.region.roundHoles.filter((round) =>
    [shape.outline, ...shape.holes].some((ring) =>
      ring.some((x, k) => k % 2 === 0 && isOn(round, x, ring[k + 1]!)),
    ),
  );
}

/** Those holes by their centres, measured from the left and bottom edges of the piece's tile. */
export function holesOf(lay: SolvedLay, i: number): DrilledHole[] {
  const frame = tileFrame(lay, i);
  return biting(lay, i).map(({ hole }) => ({
    name: hole.name,
    fromLeft: hole.at.x - frame.left,
    fromBottom: hole.at.y - frame.bottom,
    across: hole.across,
    plate: hole.plate,
  }));
}

/** Whether the edge of a ring that begins at `k` is part of a round hole's rim. */
export function isRim(rounds: readonly RoundHole[], ring: Ring, k: number): boolean {
  const next = (k + 2) % ring.length;
  return rounds.some(
    (round) => isOn(round, ring[k]!, ring[k + 1]!) && isOn(round, ring[next]!, ring[next + 1]!),
  );
}

/**
 * Whether a corner of a piece is on a hole's rim. Nothing of a piece lies inside the rim, but the
 * corners on it are rounded to the nanometre, so they may lie one further out.
 */
function isOn({ box }: RoundHole, x: number, y: number): boolean {
  const radius = (box.right - box.left) / 2;
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  return Math.hypot(x - middle.x, y - middle.y) <= radius + 1;
}
