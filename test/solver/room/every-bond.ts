import type { Nm } from "../../../src/measure/index.js";
import type { Plan, Wall } from "../../../src/model/index.js";
import { type Corner, cornersOver } from "../../../src/rules/corner.js";
import { BOND_WAYS, cornerCourses, worstOff } from "../../../src/rules/corner-bond.js";
import { latticeOf, moduleAcross } from "../../../src/solver/lattice.js";
import { layPieces } from "../../../src/solver/pieces.js";
import { regionOf } from "../../../src/solver/region.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../../../src/solver/index.js";
import { acrossOrigin, asSettled, upOrigin } from "../../../src/solver/start.js";
import { compare, costOfLaid, STEP } from "./every-layout.js";

/** What the bond misses at a corner, counted over the laid pieces as `corner/bond-broken` compares them. */
export function bondOff(corner: Corner): Nm {
  const { across: face } = corner.over.lay.lattice.face;
  const courses = cornerCourses(corner);
  if (courses.length === 0) return face;
  const begun = courses.map(({ begin }) => face - begin.cut);
  return Math.min(...begun, ...BOND_WAYS.map((way) => worstOff(courses, way)));
}

/** The cost of the best of all starts across of a room's walls in steps of 1/64 in, their heights and joints being stated. */
export function bestOfEveryBond(plan: Plan): number[] {
  const place = 1 + plan.wishes.findIndex(({ wanted }) => wanted.kind === "bond-goes-on");
  const alone = { ...plan, wishes: plan.wishes };
  const walls = plan.walls.map((wall) =>
    everyStart(plan, wall).map((laid) => ({
      laid,
      cost: costOfLaid({ plan: alone, walls: [laid] }),
    })),
  );
  const offs = new Map<string, Nm>();
  let best: number[] | null = null;
  const take = (taken: readonly number[], cost: readonly number[]): void => {
    const i = taken.length;
    if (best && compare(cost.slice(0, place), best.slice(0, place)) > 0) return;
    if (i === walls.length) {
      if (!best || compare(cost, best) < 0) best = [...cost];
      return;
    }
    walls[i]!.forEach((way, k) => {
      const next = cost.map((number, at) => number + way.cost[at]!);
      taken.forEach((other, j) => {
        const key = `${j} ${other} ${i} ${k}`;
        const off = offs.get(key) ?? offBetween(plan, walls[j]![other]!.laid, way.laid);
        offs.set(key, off);
        next[place]! += off;
      });
      take([...taken, k], next);
    });
  };
  take([], new Array<number>(plan.wishes.length + 7).fill(0));
  return best!;
}

function offBetween(plan: Plan, one: SolvedWall, other: SolvedWall): Nm {
  const solved = { plan, walls: [one, other] } as unknown as SolvedPlan;
  return [one, other]
    .flatMap((wall) => cornersOver(wall, solved))
    .reduce((sum, corner) => sum + bondOff(corner), 0);
}

function everyStart(plan: Plan, wall: Wall): SolvedWall[] {
  const lay = asSettled(wall.lays[0]!);
  const joint = lay.joint.min;
  const region = regionOf(plan, wall, joint);
  const ground = { wall, region, lay, joint };
  const module = moduleAcross(latticeOf(lay, joint, 0, 0));
  const xs = lay.across
    ? [acrossOrigin(ground, lay.across)]
    : Array.from({ length: module / STEP }, (_, i) => i * STEP);
  const y = upOrigin(ground, lay.up!);
  return xs.map((x) => {
    const { lattice, courses, pieces } = layPieces(region, latticeOf(lay, joint, x, y));
    const laid = {
      lay,
      region,
      joint,
      lattice,
      courses,
      pieces,
      inner: [],
    } as unknown as SolvedLay;
    return { wall, region, lays: [laid], trims: [], insides: [], refused: null };
  });
}
