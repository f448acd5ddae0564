import type { Nm } from "../measure/index.js";
import { type Hole, type Opening, plateReach } from "../model/index.js";
import { type Box, type Chain, overlaps, rangeBetween, type SolvedWall } from "../solver/index.js";
import { type Band, bandsOf } from "./band.js";

/** What a plate runs over besides tile of one kind. */
export type PlateOver = {
  /** By how much, the shorter way. */
  readonly by: Nm;
  /** The way of the hole's middle that would take the plate off it. */
  readonly mend: { readonly x: Nm; readonly y: Nm };
} & (
  | { readonly kind: "side"; readonly side: "left" | "right" | "bottom" | "top" }
  | { readonly kind: "opening"; readonly opening: Opening }
  | { readonly kind: "band"; readonly band: Band; readonly edge: "bottom" | "top" }
);

/** All that a hole's plate runs over: the tile's own sides, what openings take, and the edges of bands. */
export function plateOvers(wall: SolvedWall, hole: Hole): PlateOver[] {
  if (!hole.plate) return [];
  const reach = plateReach(hole);
  const { x, y } = hole.at;
  const box = {
    left: x - reach.across,
    right: x + reach.across,
    bottom: y - reach.up,
    top: y + reach.up,
  };
  return [
    ...sidesOver(wall, hole, box),
    ...openingsOver(wall, hole, box),
    ...bandsOver(wall, hole, box),
  ];
}

/** A round plate reaches a side with its middle alone; one with four sides with all of its edge. */
function sidesOver({ region }: SolvedWall, hole: Hole, box: Box): PlateOver[] {
  const isRound = hole.plate?.kind === "round";
  const along = isRound
    ? { left: hole.at.x, right: hole.at.x, bottom: hole.at.y, top: hole.at.y }
    : box;
  const upright = (chain: Chain) => rangeBetween(chain, along.bottom, along.top);
  const level = (chain: Chain) => rangeBetween(chain, along.left, along.right);
  const over = [
    { side: "left", by: upright(region.left).high - box.left, x: 1, y: 0 },
    { side: "right", by: box.right - upright(region.right).low, x: -1, y: 0 },
    { side: "bottom", by: level(region.bottom).high - box.bottom, x: 0, y: 1 },
    { side: "top", by: box.top - level(region.top).low, x: 0, y: -1 },
  ] as const;
  return over
    .filter(({ by }) => by > 0)
    .map(({ side, by, x, y }) => ({ kind: "side", side, by, mend: { x: x * by, y: y * by } }));
}

function openingsOver({ region }: SolvedWall, hole: Hole, box: Box): PlateOver[] {
  return region.takeaways
    .filter((taken) => overlaps(taken.box, box) && !isRoundOff(hole, taken.box))
    .map(({ opening, box: taken }) => {
      const ways = [
        { by: box.right - taken.left, x: -1, y: 0 },
        { by: taken.right - box.left, x: 1, y: 0 },
        { by: box.top - taken.bottom, x: 0, y: -1 },
        { by: taken.top - box.bottom, x: 0, y: 1 },
      ] as const;
      const { by, x, y } = ways.reduce((a, b) => (b.by < a.by ? b : a));
      return { kind: "opening", opening, by, mend: { x: x * by, y: y * by } };
    });
}

/** Whether a round plate keeps off a box whose corner its own box reaches into. */
function isRoundOff({ plate, at }: Hole, { left, right, bottom, top }: Box): boolean {
  if (plate?.kind !== "round") return false;
  const dx = BigInt(at.x - Math.min(Math.max(at.x, left), right));
  const dy = BigInt(at.y - Math.min(Math.max(at.y, bottom), top));
  return 4n * (dx * dx + dy * dy) >= BigInt(plate.across) ** 2n;
}

/** A band whose own edge the plate hides in part. One that the hole itself goes through is `band/cut-through`'s. */
function bandsOver(wall: SolvedWall, hole: Hole, box: Box): PlateOver[] {
  return bandsOf(wall).flatMap((band): PlateOver[] => {
    const { bounds, roundHoles } = band.lay.region;
    if (roundHoles.some((round) => round.hole === hole)) return [];
    if (!overlaps(bounds, box)) return [];
    // The hole is not in the band, so it lies under it or over it.
    const isUnder = hole.at.y < bounds.bottom;
    const by = isUnder ? box.top - bounds.bottom : bounds.top - box.bottom;
    const edge = isUnder ? "bottom" : "top";
    return [{ kind: "band", band, edge, by, mend: { x: 0, y: isUnder ? -by : by } }];
  });
}
