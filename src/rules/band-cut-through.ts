import type { Nm } from "../measure/index.js";
import { type Opening, plateReach } from "../model/index.js";
import type { RoundHole, SolvedPlan, SolvedWall } from "../solver/index.js";
import { type Band, bandsOf } from "./band.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, HOLE_CLEAR, lengthLimit } from "./trade.js";
import { length, openingName } from "./words.js";

/**
 * A band that a hole (a valve, an arm) goes through, or in whose height an opening begins or ends. A band that
 * runs into the sides of a taller opening is only interrupted, as every course beside it is.
 */
export const bandCutThrough: Rule = {
  code: "band/cut-through",
  severity: "warning",
  title: "a hole, or the sill or head of an opening, cuts through a band",
  source: COMMON_PRACTICE,
  limit: null,
  check: (wall, plan) =>
    bandsOf(wall).flatMap((band) => [
      ...band.lay.region.roundHoles.map((hole) => findHole(wall, plan, band, hole)),
      ...band.lay.region.takeaways.flatMap(({ opening, box }) =>
        opening.kind === "lay" ? [] : findEdges(wall, plan, band, opening, box),
      ),
    ]),
};

/** The heights nearest to a band at which a hole's centre keeps clear of it; null where no tile is there. */
export interface ClearHeights {
  readonly under: Nm;
  readonly over: Nm | null;
}

/** Where a hole leaves a band whole, with as much tile round it as `hole/near-edge` wants, and its plate off it. */
export function clearHeights(plan: SolvedPlan, band: Band, { hole }: RoundHole): ClearHeights {
  const clear = lengthLimit(plan.plan.limits, "hole", HOLE_CLEAR);
  const half = Math.max(Math.ceil(hole.across / 2) + clear, plateReach(hole).up);
  return {
    under: band.under.region.bounds.top - half,
    over: band.over && band.over.region.bounds.bottom + half,
  };
}

function findHole({ wall }: SolvedWall, plan: SolvedPlan, band: Band, round: RoundHole): Finding {
  const { lay } = band.lay;
  const { bottom, top } = band.lay.region.bounds;
  const { under, over } = clearHeights(plan, band, round);
  const higher = over === null ? "" : `, or at ${length(plan, over)} or higher,`;
  return {
    origin: round.hole.origin,
    blocks: [lay, lay.tile, wall],
    message:
      `hole ${round.hole.name}, ${length(plan, round.hole.at.y)} up, goes through band ${lay.name}, which runs from ` +
      `${length(plan, bottom)} to ${length(plan, top)}; its centre at ${length(plan, under)} or lower${higher} is wanted`,
  };
}

/** A level edge of what an opening takes that lies within a band. */
export interface EdgeInBand {
  readonly edge: "sill" | "head";
  /** How far it would go down to the band's bottom, and up to its top. */
  readonly down: Nm;
  readonly up: Nm;
}

/** The sill or the head of an opening that begins or ends within a band. */
export function edgesInBand(
  band: Band,
  { bottom, top }: { readonly bottom: Nm; readonly top: Nm },
): EdgeInBand[] {
  const bounds = band.lay.region.bounds;
  const edges = [
    { edge: "sill", at: bottom },
    { edge: "head", at: top },
  ] as const;
  return edges
    .filter(({ at }) => bounds.bottom < at && at < bounds.top)
    .map(({ edge, at }) => ({ edge, down: at - bounds.bottom, up: bounds.top - at }));
}

function findEdges(
  { wall }: SolvedWall,
  plan: SolvedPlan,
  band: Band,
  opening: Opening,
  box: { readonly bottom: Nm; readonly top: Nm },
): Finding[] {
  const { lay } = band.lay;
  return edgesInBand(band, box).map(({ edge, down, up }) => ({
    origin: opening.origin,
    blocks: [opening, lay, lay.tile, wall],
    message:
      `the ${edge} of ${openingName(opening)}, with its joint, cuts band ${lay.name} ${length(plan, down)} over its bottom ` +
      `and ${length(plan, up)} under its top; a ${edge} on either, or clear of the band, is wanted`,
  }));
}
