import type { Nm } from "../measure/index.js";
import type { Lay, Plan } from "../model/index.js";
import { balanceOf, endsOf } from "./choose/balance.js";
import { choose, compareScores, firstDifference, scoreOf } from "./choose/index.js";
import { encloses } from "./box.js";
import { moduleAcross } from "./lattice.js";
import { layRegion, plotOf } from "./lay-region.js";
import { layWall } from "./lay-wall.js";
import { asSettled } from "./start.js";
import type { Choice, Option, Region, Score, SolvedLay, SolvedWall } from "./solved.js";

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

/** The ways to start one lay of a wall that really differ, whatever of its start the plan states. */
export interface WallOptions {
  /** The lay as the plan has it. */
  readonly laid: SolvedLay;
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
 * The lays of a wall that may start otherwise, the lowest first: one of each block, but for what is set, which has
 * the start that it was set with. What goes on from another lay starts as that does.
 */
export function startedLays({ lays }: SolvedWall): readonly SolvedLay[] {
  return lays.filter(
    ({ lay, stand }, i) =>
      !stand &&
      lay.goesOnFrom === null &&
      !lays.slice(0, i).some((other) => other.lay.origin === lay.origin),
  );
}

/**
 * The best few starts of one lay of a wall (by default the first that may start otherwise), as if the plan left
 * its start open, with the one that it has among them; a joint that the plan states is kept, and so are the other
 * lays' starts, but for those that its block states, too. null for a wall that isn't laid, or of which all is set.
 */
export function optionsOf(
  plan: Plan,
  solved: SolvedWall,
  laid: SolvedLay | undefined = startedLays(solved)[0],
): WallOptions | null {
  if (!laid) return null;
  const open: Lay = { ...laid.lay, across: null, up: null };
  const choice = choiceOf(plan, solved, laid, open);
  const others = [choice.chosen, ...choice.others]
    .map((option) => relaid(plan, solved, laid.lay, option))
    .filter(({ lays }) => !isSame(named(lays, laid), laid));
  // Among equals the plan's own is told first: there is nothing to gain by leaving it.
  const ways = [solved, ...others]
    .map((wall) => {
      const lay = named(wall.lays, laid);
      return { wall, lay, score: scoreOf(wall.wall, lay, plan.limits) };
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
  return { laid, options, left: laid.choice?.left ?? [], weighed, capped };
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
    // What goes on from another lay begins where that one has its tiles now; a block has one start for all its tiles.
    if (had && plot.lay.goesOnFrom !== null) {
      return { ...had, across: asSettled(plot.lay).across ?? had.across };
    }
    if (had && plot.lay.origin === lay.origin) return { ...had, across: option.across };
    const regionAt = (joint: Nm) => layRegion(plot, joint);
    // What was left open is chosen anew where it comes to have another place; over courses that are all set nothing was laid.
    const stays = had && (!had.choice || isSamePlace(regionAt(had.joint), had.region));
    return stays ? had : choose(plan, wall, plot.lay, regionAt);
  });
}

/** Whether two regions of one wall have the same tile: within the same bounds, round the same openings and lays. */
function isSamePlace(a: Region, b: Region): boolean {
  const boxes = ({ bounds, takeaways }: Region) => [bounds, ...takeaways.map(({ box }) => box)];
  const [ours, theirs] = [boxes(a), boxes(b)];
  return (
    ours.length === theirs.length &&
    ours.every((box, i) => encloses(box, theirs[i]!) && encloses(theirs[i]!, box))
  );
}

function named(lays: readonly SolvedLay[], { lay: { name } }: SolvedLay): SolvedLay {
  return lays.find(({ lay }) => lay.name === name)!;
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
