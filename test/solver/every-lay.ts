import type { Nm } from "../../src/measure/index.js";
import type { Lay, Plan, Wall } from "../../src/model/index.js";
import type { Chosen } from "../../src/solver/choose/index.js";
import { meetingLays } from "../../src/solver/corner-lays.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../../src/solver/index.js";
import { latticeOf, moduleAcross, moduleUp } from "../../src/solver/lattice.js";
import { innerSides, layRegion } from "../../src/solver/lay-region.js";
import { plotFor } from "../../src/solver/lay-wall.js";
import { layPieces } from "../../src/solver/pieces.js";
import { regionOf } from "../../src/solver/region.js";
import { cornerPairs } from "../../src/solver/room/corners.js";
import { acrossOrigin, asSettled, upOrigin } from "../../src/solver/start.js";
import { cornersOver } from "../../src/rules/corner.js";
import { bondOff } from "./room/every-bond.js";
import { compare, costOfLaid, STEP } from "./room/every-layout.js";

/** One lay laid with one start, alone on its wall, and what it costs by itself. */
interface Way {
  readonly wall: SolvedWall;
  readonly cost: readonly number[];
}

/** Lays that meet at a corner, by their numbers; the corner is told of the first one's wall. */
type Pair = readonly [number, number];

/**
 * The cost of the best of all layouts of a room's lays together, in steps of 1/64 in: every start of every lay, every joint
 * that all lays of a range may have. Starts count for no other lay's place; corners alone tie lays together.
 */
export function bestOfEveryLay(plan: Plan): readonly number[] {
  const ranges = plan.walls.flatMap(({ lays }) => lays.map(({ joint }) => joint));
  const range = ranges.find(({ min, max }) => min < max) ?? ranges[0]!;
  const bests = [];
  for (let joint = range.min; joint <= range.max; joint += STEP) {
    bests.push(bestAt(plan, (lay) => (lay.joint.min < lay.joint.max ? joint : lay.joint.min)));
  }
  return bests.reduce((a, b) => (compare(b, a) < 0 ? b : a));
}

function bestAt(plan: Plan, jointOf: (lay: Lay) => Nm): readonly number[] {
  const isBonded = plan.wishes.some(({ wanted }) => wanted.kind === "bond-goes-on");
  const all = plan.walls.flatMap((wall) =>
    wall.lays.map((lay) => waysOf(plan, wall, lay, jointOf, isBonded)),
  );
  const pairs = pairsOf(plan, all);
  return partsOf(all.length, pairs)
    .map((part) => bestOfPart(plan, part, all, pairs))
    .reduce(sum);
}

/** The best of lays that hang together, each way of one beside each of the others. */
function bestOfPart(
  plan: Plan,
  part: readonly number[],
  all: readonly (readonly Way[])[],
  pairs: readonly Pair[],
): readonly number[] {
  let best: readonly number[] | null = null;
  const known = new Map<string, readonly number[]>();
  const take = (taken: readonly number[], cost: readonly number[]): void => {
    if (taken.length === part.length) {
      if (!best || compare(cost, best) < 0) best = cost;
      return;
    }
    const i = part[taken.length]!;
    all[i]!.forEach((way, k) => {
      let next = sum(cost, way.cost);
      for (const [a, b] of pairs) {
        if (Math.max(part.indexOf(a), part.indexOf(b)) !== taken.length) continue;
        if (a !== i && b !== i) continue;
        const other = a === i ? b : a;
        const at = taken[part.indexOf(other)]!;
        const key = `${a} ${b} ${at} ${k}`;
        const missed = known.get(key) ?? missedBy(plan, way.wall, all[other]![at]!.wall);
        known.set(key, missed);
        next = sum(next, missed);
      }
      take([...taken, k], next);
    });
  };
  take([], new Array<number>(plan.wishes.length + 7).fill(0));
  return best!;
}

/** What two lays miss of the wishes for corners. */
function missedBy(plan: Plan, a: SolvedWall, b: SolvedWall): number[] {
  const [one, other] = [a.lays[0]!.lattice, b.lays[0]!.lattice];
  const solved = { plan, walls: [a, b] } as unknown as SolvedPlan;
  const misses = plan.wishes.map(({ wanted }) => {
    if (wanted.kind === "courses-meet") {
      const modules = [moduleUp(one), moduleUp(other)];
      const [small, large] = [Math.min(...modules), Math.max(...modules)];
      if (large % small !== 0) return Math.min(one.face.up, other.face.up);
      const apart = Math.abs(2 * one.y - one.joint - (2 * other.y - other.joint)) % (2 * small);
      return Math.floor(Math.min(apart, 2 * small - apart) / 2);
    }
    if (wanted.kind !== "bond-goes-on") return 0;
    if (one.face.across !== other.face.across || one.face.up !== other.face.up) return 0;
    const corners = [a, b].flatMap((wall) => cornersOver(wall, solved));
    return corners.reduce((all, corner) => all + bondOff(corner), 0);
  });
  return [0, ...misses, 0, 0, 0, 0, 0, 0];
}

/** Every start of a lay; where only heights tie lays together the best for each height alone. */
function waysOf(
  plan: Plan,
  wall: Wall,
  own: Lay,
  jointOf: (lay: Lay) => Nm,
  isEach: boolean,
): Way[] {
  const plot = plotFor(plan, wall, own.name, ({ lay }) => anyStart(lay, jointOf(lay)));
  const joint = jointOf(own);
  const lay = asSettled({ ...plot.lay, joint: own.joint });
  const region = layRegion({ ...plot, lay }, joint);
  const whole = regionOf(plan, wall, joint);
  const inner = innerSides(region, whole);
  const ground = { wall, region, lay, joint };
  const modules = latticeOf(lay, joint, 0, 0);
  const xs = lay.across ? [acrossOrigin(ground, lay.across)] : steps(moduleAcross(modules));
  const ys = lay.up ? [upOrigin(ground, lay.up)] : steps(moduleUp(modules));
  return ys.flatMap((y): Way[] => {
    const ways = xs.map((x): Way => {
      const { lattice, courses, pieces } = layPieces(region, latticeOf(lay, joint, x, y));
      const laid = { ...{ lay, region, inner, joint, lattice, courses, pieces } };
      const solved: SolvedWall = {
        ...{ wall, region: whole, lays: [laid as unknown as SolvedLay] },
        ...{ trims: [], insides: [], refused: null },
      };
      return { wall: solved, cost: costOfLaid({ plan, walls: [solved] }) };
    });
    return isEach ? ways : [ways.reduce((a, b) => (compare(b.cost, a.cost) < 0 ? b : a))];
  });
}

/** A lay's place doesn't hang from where those before it start. */
function anyStart(lay: Lay, joint: Nm): Chosen {
  const up = lay.up ?? ({ kind: "full-course", from: "bottom" } as const);
  return { joint, across: { kind: "full-tile", from: "left" }, up, choice: null };
}

function pairsOf(plan: Plan, all: readonly (readonly Way[])[]): Pair[] {
  let next = 0;
  const walls = plan.walls.map((wall) => ({
    wall,
    lays: wall.lays.map(() => all[next++]![0]!.wall.lays[0]!),
  }));
  const lays = walls.flatMap((each) => each.lays);
  return cornerPairs(plan.walls).flatMap(({ a, b, end }) => {
    const { meets } = plan.walls[a]!.edges[end];
    const isTold = "lap" in meets && meets.lap === "over";
    const ends = [
      { wall: walls[a]!, side: end },
      { wall: walls[b]!, side: end === "left" ? "right" : "left" },
    ] as const;
    const [told, other] = isTold ? ends : [ends[1], ends[0]];
    return meetingLays(told, other).map(({ lay, other: beside }): Pair => [
      lays.indexOf(lay),
      lays.indexOf(beside),
    ]);
  });
}

function partsOf(many: number, pairs: readonly Pair[]): number[][] {
  const part = Array.from({ length: many }, (_, i) => i);
  for (const [a, b] of pairs) {
    const [into, from] = [part[a]!, part[b]!];
    part.forEach((own, i) => (part[i] = own === from ? into : own));
  }
  return [...new Set(part)].map((own) => part.flatMap((each, i) => (each === own ? [i] : [])));
}

function steps(length: Nm): Nm[] {
  return Array.from({ length: Math.ceil(length / STEP) }, (_, i) => i * STEP);
}

function sum(a: readonly number[], b: readonly number[]): number[] {
  return a.map((number, i) => number + b[i]!);
}
