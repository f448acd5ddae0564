import { divideRounded, type Nm } from "../measure/index.js";
import type { Lay, Opening } from "../model/index.js";
import { doubledCentre, type SolvedPlan, type SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { ENDS, lengthLimit, OFF_CENTRE } from "./trade.js";
import { length, openingName } from "./words.js";

/**
 * An opening that nearly stands on the line its wall's lay is centred on: the cuts at its two sides
 * differ by twice the miss, and that reads as a mistake. A miss by which the cuts differ no more than end cuts
 * may is none; an opening farther off than `near` is not meant to be on that line.
 */
export const openingOffCentre: Rule = {
  code: "opening/off-centre",
  severity: "information",
  title: "an opening nearly stands on the line that the lay is centred on",
  source: OFF_CENTRE.source,
  limit: "centre",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) => {
      const { across } = lay;
      if (!("centre" in across)) return [];
      const line = doubledCentre(wall.wall, across.centre);
      return lay.region.takeaways.flatMap(({ opening }) => {
        if (opening.kind === "lay") return [];
        const middle = doubledCentre(wall.wall, { on: "opening", opening });
        return findOff(wall, plan, { lay: lay.lay, opening, twiceOff: middle - line });
      });
    }),
};

/** An opening and twice the way of its middle to the right of the line, so that half a nanometre is not lost. */
interface Off {
  readonly lay: Lay;
  readonly opening: Opening;
  readonly twiceOff: Nm;
}

function findOff(
  { wall }: SolvedWall,
  plan: SolvedPlan,
  { lay, opening, twiceOff }: Off,
): Finding[] {
  const near = lengthLimit(plan.plan.limits, "centre", OFF_CENTRE.near);
  const differ = Math.abs(twiceOff);
  if (differ <= ENDS.most || differ > 2 * near) return [];
  const off = length(plan, divideRounded(differ, 2));
  return [
    {
      origin: opening.origin,
      blocks: [opening, lay, lay.tile, wall],
      message:
        `the middle of ${openingName(opening)} is ${off} ${twiceOff > 0 ? "right" : "left"} of the line that the ` +
        `lay is centred on, and the cuts beside it differ by ${length(plan, differ)}; ` +
        `at most ${length(plan, ENDS.most)}, or a lay centred on ${opening.name}, is wanted`,
    },
  ];
}
