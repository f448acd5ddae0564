import { NM_PER, type Nm } from "../../../src/measure/index.js";
import type { Plan, Wall } from "../../../src/model/index.js";
import { latticeOf, moduleAcross, moduleUp } from "../../../src/solver/lattice.js";
import { layPieces } from "../../../src/solver/pieces.js";
import { regionOf } from "../../../src/solver/region.js";
import { cornerPairs } from "../../../src/solver/room/corners.js";
import { measureRoom } from "../../../src/solver/room/index.js";
import { settle } from "../../../src/solver/room/settle.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../../../src/solver/index.js";
import { acrossOrigin, asSettled, upOrigin } from "../../../src/solver/start.js";

/** A sixty-fourth of an inch. */
export const STEP: Nm = NM_PER.inch / 64;

/** What a laid room costs: what lays nothing, each wish's misses, the score; counted over its pieces. */
export function costOfLaid({ plan, walls }: Pick<SolvedPlan, "plan" | "walls">): number[] {
  const { misses, score } = measureRoom(plan, walls, plan.wishes);
  const { slivers, underHalf, imbalance, cuts, tiles, jointOver } = score;
  const empty = walls.filter(({ lays: [lay] }) => lay!.pieces.count === 0).length;
  return [empty, ...misses, slivers, underHalf, imbalance, cuts, tiles, jointOver];
}

export function compare(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((number, k) => number !== b[k]);
  return i < 0 ? 0 : a[i]! - b[i]!;
}

/** The cost of the best of all layouts of a room in steps of 1/64 in: starts, one joint for all, places, heights. */
export function bestOfEvery(plan: Plan): number[] {
  const { joint } = plan.walls[0]!.lays[0]!;
  const costs = [];
  for (let at = joint.min; at <= joint.max; at += STEP) costs.push(bestAtJoint(plan, at));
  return costs.reduce((a, b) => (compare(b, a) < 0 ? b : a));
}

/** A wall with its courses at a height, laid as well as it can be. */
interface AtHeight {
  readonly cost: number[];
  readonly wall: SolvedWall;
}

function bestAtJoint(plan: Plan, joint: Nm): number[] {
  const walls = plan.walls.map((wall) => byHeight(plan, wall, joint));
  let best: number[] | null = null;
  const take = (i: number, taken: readonly AtHeight[]): void => {
    if (i < walls.length) {
      for (const way of walls[i]!) take(i + 1, [...taken, way]);
      return;
    }
    const cost = taken.map((way) => way.cost).reduce(sum);
    // Courses alone tie walls together.
    for (const [k, wish] of plan.wishes.entries()) {
      if (wish.wanted.kind !== "courses-meet") continue;
      for (const { a, b } of cornerPairs(plan.walls)) {
        cost[k + 1]! += missBetween(taken[a]!.wall, taken[b]!.wall);
      }
    }
    if (!best || compare(cost, best) < 0) best = cost;
  };
  take(0, []);
  return best!;
}

/** Twice the distance of bed joints of lays with one module, halved. */
function missBetween(a: SolvedWall, b: SolvedWall): number {
  const [one, other] = [a.lays[0]!.lattice, b.lays[0]!.lattice];
  const module = moduleUp(one);
  const apart = Math.abs(one.y - other.y) % module;
  return Math.min(apart, module - apart);
}

/** The best layout of a wall for each height. */
function byHeight(plan: Plan, wall: Wall, joint: Nm): AtHeight[] {
  const best = new Map<Nm, AtHeight>();
  for (const way of everyWay(wall)) {
    const lay = asSettled(way.lays[0]!);
    const region = regionOf(plan, way, joint);
    const ground = { wall: way, region, lay, joint };
    const modules = latticeOf(lay, joint, 0, 0);
    const xs = lay.across ? [acrossOrigin(ground, lay.across)] : steps(moduleAcross(modules));
    const ys = lay.up ? [upOrigin(ground, lay.up)] : steps(moduleUp(modules));
    for (const y of ys) {
      for (const x of xs) {
        const { lattice, courses, pieces } = layPieces(region, latticeOf(lay, joint, x, y));
        const laid = { lay, region, joint, lattice, courses, pieces } as unknown as SolvedLay;
        const solved: SolvedWall = {
          wall: way,
          region,
          lays: [laid],
          trims: [],
          insides: [],
          refused: null,
        };
        const cost = costOfLaid({ plan, walls: [solved] });
        const known = best.get(y);
        if (!known || compare(cost, known.cost) < 0) best.set(y, { cost, wall: solved });
      }
    }
  }
  return [...best.values()];
}

/** The wall with its openings wherever they may be, and its top. */
function* everyWay(wall: Wall): Generator<Wall> {
  const between = (range: { min: Nm; max: Nm } | null, at: Nm): Nm[] =>
    range ? steps(range.max - range.min + STEP).map((step) => range.min + step) : [at];
  const stops = between(wall.stop, wall.size.up);
  let ways: { x: Nm; y: Nm }[][] = [[]];
  for (const { at, free } of wall.openings) {
    const places = between(free.x, at.x).flatMap((x) =>
      between(free.y, at.y).map((y) => ({ x, y })),
    );
    ways = ways.flatMap((way) => places.map((place) => [...way, place]));
  }
  for (const stop of stops) {
    for (const places of ways) yield settle(wall, { stop, places });
  }
}

function steps(length: Nm): Nm[] {
  return Array.from({ length: Math.ceil(length / STEP) }, (_, i) => i * STEP);
}

function sum(a: readonly number[], b: readonly number[]): number[] {
  return a.map((number, i) => number + b[i]!);
}
