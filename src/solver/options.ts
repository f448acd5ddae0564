import type { Nm } from "../measure/index.js";
import type { Lay, Plan } from "../model/index.js";
import { balanceOf, endsOf } from "./choose/balance.js";
import { choose, compareScores, firstDifference, scoreOf } from "./choose/index.js";
import { moduleAcross } from "./lattice.js";
import { layRegion, plotOf } from "./lay-region.js";
import { layWall } from "./lay-wall.js";
import type { Choice, Option, Score, SolvedLay, SolvedWall } from "./solved.js";

/** What is seen of the tiles at the ends of a wall, nm. */
export interface EndCuts {
  /** At the left and the right of course 1, course 2 and so on, until the bond begins again. */
  readonly left: readonly Nm[];
  readonly right: readonly Nm[];
  readonly bottom: Nm;
  readonly top: Nm;
}

/** One way to lay a wall, laid. */
export interface LaidOption extends Option {
  /** The wall as it is laid so. */
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
  readonly ends: EndCuts;
  /** The first measure on which it is worse than the best; null for the best, and where it is as good. */
  readonly behind: keyof Score | null;
  /** Whether it is what the plan has. */
  readonly had: boolean;
}

/** The ways to lay a wall that really differ, whatever of its start the plan states. */
export interface WallOptions {
  /** Best first, by the order of `Score`. */
  readonly options: readonly LaidOption[];
  /** What the plan leaves to the solver; nothing where its start and joint are written down. */
  readonly left: Choice["left"];
  /** How many starts and joints were weighed. */
  readonly weighed: number;
  /** Whether not all could be weighed: there may be a better one. */
  readonly capped: boolean;
}

/**
 * The best few starts of a wall, as if the plan left its start open, with the one that it has among
 * them; a joint that the plan states is kept. null for a wall that isn't laid, or whose lowest courses are set.
 */
export function optionsOf(plan: Plan, solved: SolvedWall): WallOptions | null {
  const [laid] = solved.lays;
  // What is set has one start: the one that it was set with.
  if (!laid || laid.stand) return null;
  const open: Lay = { ...laid.lay, across: null, up: null };
  const choice = choiceOf(plan, solved, laid, open);
  const others = [choice.chosen, ...choice.others]
    .map((option) => relaid(plan, solved, laid.lay, option))
    .filter(({ lays }) => !isSame(lays[0]!, laid));
  // Among equals the plan's own is told first: there is nothing to gain by leaving it.
  const ways = [solved, ...others]
    .map((wall) => {
      const lay = wall.lays[0]!;
      return { wall, lay, score: scoreOf(lay, plan.limits) };
    })
    .sort((a, b) => compareScores(a.score, b.score));
  const [best] = ways;
  const options = ways.map(({ wall, lay, score }): LaidOption => {
    const { across, up, joint } = lay;
    const behind = firstDifference(best!.score, score);
    const had = lay === laid;
    return { across, up, joint, score, wall, lay, ends: endCuts(lay), behind, had };
  });
  const { weighed, capped } = choice;
  return { options, left: laid.choice?.left ?? [], weighed, capped };
}

/** What the solver chooses where the start is open; it has done so already where the plan leaves it open. */
function choiceOf(plan: Plan, solved: SolvedWall, laid: SolvedLay, open: Lay): Choice {
  const { choice } = laid;
  if (choice?.by === "wall" && choice.left.includes("across") && choice.left.includes("up"))
    return choice;
  // An open start always leaves a choice.
  const plot = plotOf(plan, solved, laid);
  return choose(plan, solved.wall, open, (joint) => layRegion(plot, joint)).choice!;
}

/** The wall with one of its lays started otherwise; the other lays start as they do. */
function relaid(plan: Plan, { wall, lays }: SolvedWall, lay: Lay, option: Option): SolvedWall {
  return layWall(plan, wall, (plot) => {
    if (plot.lay.name === lay.name) return { ...option, choice: null };
    const had = lays.find((each) => each.lay.name === plot.lay.name);
    // Over courses that are all set nothing is laid.
    return had ?? choose(plan, wall, plot.lay, (joint) => layRegion(plot, joint));
  });
}

/** Whether two lays of one wall come to the same pieces. */
function isSame(a: SolvedLay, b: SolvedLay): boolean {
  return (
    a.joint === b.joint &&
    a.lattice.y === b.lattice.y &&
    (a.lattice.x - b.lattice.x) % moduleAcross(a.lattice) === 0
  );
}

function endCuts({ region, lattice }: SolvedLay): EndCuts {
  const { across, up, shifts } = balanceOf(region, lattice);
  const ends = shifts.map((shift) => endsOf(across, lattice.x + shift));
  const { low, high } = endsOf(up, lattice.y);
  return {
    left: ends.map((end) => end.low),
    right: ends.map((end) => end.high),
    bottom: low,
    top: high,
  };
}
