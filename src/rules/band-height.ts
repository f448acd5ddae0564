import { bandOff, type BandPair, bandPairs } from "./band.js";
import type { SolvedPlan } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { BANDS, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A band that stands at another height on the next wall: its line is the first that an eye follows round the
 * corner. Told of the wall whose tile covers the other's, since that one is set last.
 */
export const bandHeight: Rule = {
  code: "band/height",
  severity: "warning",
  title: "a band stands at another height on the next wall",
  source: BANDS.source,
  limit: "band",
  check: (wall, plan) => bandPairs(wall, plan).flatMap((pair) => findOff(pair, wall.wall, plan)),
};

function findOff(pair: BandPair, wall: Finding["blocks"][number], plan: SolvedPlan): Finding[] {
  const most = lengthLimit(plan.plan.limits, "band", BANDS.mostOff);
  const { bottom, top } = bandOff(pair);
  if (Math.abs(bottom) <= most && Math.abs(top) <= most) return [];
  const { corner, band, other } = pair;
  const { lay } = band.lay;
  const words = (nm: number): string =>
    nm === 0
      ? "level with"
      : `${lengthOff(plan, Math.abs(nm), most)} ${nm > 0 ? "above" : "below"}`;
  const [own, their] = [band.lay.region.bounds, other.lay.region.bounds];
  const found =
    bottom === top
      ? `band ${lay.name} stands ${words(bottom)} that of ${corner.other.wall.name}`
      : `the bottom of band ${lay.name} is ${words(bottom)}, its top ${words(top)} that of ${corner.other.wall.name}`;
  const heights = `it runs from ${length(plan, own.bottom)} to ${length(plan, own.top)} up, the other from ${length(plan, their.bottom)} to ${length(plan, their.top)}`;
  const wanted = most === 0 ? "bands that meet are" : `at most ${length(plan, most)} is`;
  return [
    {
      origin: corner.edge.origin,
      blocks: [lay, lay.tile, wall, corner.other.wall],
      message: `at the ${corner.side} corner ${found}: ${heights}; ${wanted} wanted`,
    },
  ];
}
