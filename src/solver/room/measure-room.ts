import type { Plan, Wish } from "../../model/index.js";
import { balanceOf, imbalanceAcross } from "../choose/balance.js";
import { scoreOf } from "../choose/score-laid.js";
import type { Score, SolvedLay, SolvedWall } from "../solved.js";
import { endsAt, type MeetingLays, meetingLays, type WallEnd } from "../corner-lays.js";
import { BondEnd, bondMiss, gapBetween } from "./bond-miss.js";
import { type CornerPair, cornerPairs } from "./corners.js";
import { centreMiss, coursesMiss, isEdgeIn, openingMiss, sideMiss } from "./misses.js";
import { limitsUnder } from "./wanting.js";

/** What laid walls come to together. */
export interface Measured {
  /** What each wish misses: nm, or a number of cuts. */
  readonly misses: readonly number[];
  /** The walls' scores, added up. */
  readonly score: Score;
}

/** Measures laid walls against wishes, piece by piece. */
export function measureRoom(
  plan: Plan,
  walls: readonly SolvedWall[],
  wishes: readonly Wish[],
): Measured {
  const none = { slivers: 0, underHalf: 0, imbalance: 0, cuts: 0, tiles: 0, jointOver: 0 };
  const score = laidWalls(walls).reduce<Score>(
    (sum, { wall, lay }) => addScores(sum, scoreOf(wall.wall, lay, plan.limits)),
    none,
  );
  return { misses: wishes.map((wish) => missOf(plan, walls, wish)), score };
}

interface LaidWall {
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
}

function laidWalls(walls: readonly SolvedWall[]): LaidWall[] {
  return walls.flatMap((wall) => wall.lays.map((lay) => ({ wall, lay })));
}

function missOf(plan: Plan, walls: readonly SolvedWall[], wish: Wish): number {
  const { wanted } = wish;
  if (wanted.kind === "courses-meet") {
    return cornersMissed(walls, wish, ({ lay, other }) => coursesMiss(lay.lattice, other.lattice));
  }
  if (wanted.kind === "bond-goes-on") {
    return cornersMissed(walls, wish, ({ lay, other }, told) => bondMissed(plan, lay, other, told));
  }
  const name =
    wanted.kind === "centre"
      ? wanted.on.wall
      : wanted.kind === "whole-at-opening"
        ? wanted.of.wall
        : wish.wall;
  const concerned = laidWalls(walls).filter(({ wall }) => name === null || wall.wall.name === name);
  return concerned.reduce((sum, laid) => sum + missAt(plan, laid, wanted), 0);
}

/** What is missed of lays that meet at a corner; `told` are the wall that it is told of, and the other. */
type MissedOf = (lays: MeetingLays, told: readonly [WallEnd, WallEnd]) => number;

/** The miss at all corners that a wish is for. */
function cornersMissed(
  walls: readonly SolvedWall[],
  { wall: own }: Wish,
  missedOf: MissedOf,
): number {
  return cornerPairs(walls.map(({ wall }) => wall)).reduce((sum, { a, b, end }) => {
    const [one, other] = [walls[a]!, walls[b]!];
    if (own !== null && one.wall.name !== own && other.wall.name !== own) return sum;
    return sum + cornerMissed(one, other, end, missedOf);
  }, 0);
}

/** The miss of all lays that meet at a corner, as the rules for it compare them. */
function cornerMissed(
  one: SolvedWall,
  other: SolvedWall,
  end: CornerPair["end"],
  missedOf: MissedOf,
): number {
  const told = endsAt(one, other, end);
  return meetingLays(...told).reduce((sum, each) => sum + missedOf(each, told), 0);
}

function bondMissed(
  plan: Plan,
  lay: SolvedLay,
  other: SolvedLay,
  [over, under]: readonly [WallEnd, WallEnd],
): number {
  const endOf = ({ wall: { wall }, side }: WallEnd, { region, lattice }: SolvedLay): BondEnd =>
    new BondEnd({ wall, region, lattice }, side);
  const ends = [endOf(over, lay), endOf(under, other)] as const;
  return bondMiss(...ends, gapBetween(plan, ...ends));
}

function missAt(plan: Plan, { wall, lay }: LaidWall, wanted: Wish["wanted"]): number {
  const { lattice, region } = lay;
  switch (wanted.kind) {
    case "courses-meet":
    case "bond-goes-on":
      return 0;
    case "centre": {
      const opening = wall.wall.openings.find(({ name }) => name === wanted.on.opening);
      // Of a wall's lays only those round it have a tile or a joint there.
      const isRound = region.takeaways.some((taken) => taken.opening === opening);
      return opening && isRound ? centreMiss(lattice, opening) : 0;
    }
    case "whole-at-opening": {
      const taken = region.takeaways.find(({ opening }) => opening.name === wanted.of.opening);
      const isMet = taken !== undefined && isEdgeIn(region, taken.box, wanted.at);
      return isMet ? openingMiss(lattice, taken.box, wanted.at) : 0;
    }
    case "whole-at-side":
      return sideMiss(lattice, region, wanted.at);
    case "equal-ends":
      return imbalanceAcross(balanceOf(region, lattice), lattice.x);
    case "no-cut":
      return scoreOf(wall.wall, lay, limitsUnder(plan.limits, wanted.under)).slivers;
    case "few-cuts":
      return scoreOf(wall.wall, lay, plan.limits).cuts;
  }
}

function addScores(a: Score, b: Score): Score {
  return {
    slivers: a.slivers + b.slivers,
    underHalf: a.underHalf + b.underHalf,
    imbalance: a.imbalance + b.imbalance,
    cuts: a.cuts + b.cuts,
    tiles: a.tiles + b.tiles,
    jointOver: a.jointOver + b.jointOver,
  };
}
