import { type Edge } from "../model/index.js";
import { divideRounded, type Nm } from "../measure/index.js";
import {
  pieceBounds,
  pieceId,
  rangeBetween,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  visibleExtent,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { ENDS, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * Courses whose two ends differ. Where a side is out of plumb the ends of a phase of the bond are
 * compared by their mean, since no start balances each. The ends that the bond itself swaps from
 * course to course (the left ends of one phase are the right ends of another) are balanced over the
 * wall. A whole tile at a free edge is no cut: the other end then takes what is left.
 */
export const balanceUnequalEnds: Rule = {
  code: "balance/unequal-ends",
  severity: "warning",
  title: "the two end cuts of a course differ by more than 1/8 in where both show",
  source: ENDS.source,
  limit: "ends",
  check: (wall, plan) => wall.lays.flatMap((lay) => findUnequal(wall, plan, lay)),
};

/** The ends of the courses that stand alike: one phase of the bond. */
interface Phase {
  readonly left: Nm;
  readonly right: Nm;
  readonly pieces: readonly number[];
}

/** The two ends of one course. */
interface Ends {
  readonly left: Nm;
  readonly right: Nm;
  readonly pieces: readonly [number, number];
}

function findUnequal(wall: SolvedWall, plan: SolvedPlan, lay: SolvedLay): Finding[] {
  const most = lengthLimit(plan.plan.limits, "ends", ENDS.most);
  const phases = phasesOf(wall, lay);
  const lefts = phases.map((phase) => phase.left).sort((a, b) => a - b);
  const rights = phases.map((phase) => phase.right).sort((a, b) => a - b);
  if (lefts.every((left, i) => Math.abs(left - rights[i]!) <= most)) return [];
  const worst = phases.reduce((a, b) => (apart(b) > apart(a) ? b : a));
  // A plan that asks for a whole tile at one side has chosen this.
  const asked = lay.lay.across?.kind === "full-tile";
  return [
    {
      origin: lay.lay.origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      ...(asked ? { severity: "information" as const } : {}),
      message:
        `the left end shows ${length(plan, worst.left)} and the right end ${length(plan, worst.right)}: ` +
        `${lengthOff(plan, apart(worst), most)} apart; at most ${length(plan, most)} is wanted`,
      pieces: worst.pieces.map((i) => pieceId(lay, i)),
    },
  ];
}

function apart({ left, right }: Phase): Nm {
  return Math.abs(left - right);
}

function phasesOf(wall: SolvedWall, lay: SolvedLay): Phase[] {
  const byPhase = new Map<number, Ends[]>();
  lay.courses.forEach((course, at) => {
    const ends = endsOf(wall, lay, at);
    if (!ends) return;
    const phase = (course.number - 1) % lay.lattice.q;
    const courses = byPhase.get(phase) ?? [];
    byPhase.set(phase, courses);
    courses.push(ends);
  });
  return [...byPhase.values()].map((courses) => ({
    left: mean(courses.map((ends) => ends.left)),
    right: mean(courses.map((ends) => ends.right)),
    pieces: courses.flatMap((ends) => ends.pieces),
  }));
}

function mean(lengths: readonly Nm[]): Nm {
  return divideRounded(
    lengths.reduce((sum, nm) => sum + nm, 0),
    lengths.length,
  );
}

/** What shows at the two ends of a course; null unless both reach the wall's sides and both show. */
function endsOf({ wall }: SolvedWall, lay: SolvedLay, at: number): Ends | null {
  const { pieces, lattice, region } = lay;
  const first = pieces.courseStart[at]!;
  const last = pieces.courseStart[at + 1]! - 1;
  if (last <= first) return null;
  const [a, b] = [pieceBounds(pieces, first), pieceBounds(pieces, last)];
  const face = lattice.face.across;
  const reaches =
    a.left <= rangeBetween(region.left, a.bottom, a.top).high &&
    b.right >= rangeBetween(region.right, b.bottom, b.top).low;
  const left = visibleExtent(region, a)?.width ?? 0;
  const right = visibleExtent(region, b)?.width ?? 0;
  if (!reaches || left === 0 || right === 0) return null;
  const isOpen = (side: "left" | "right"): boolean =>
    !lay.inner.includes(side) && endsOpen(wall.edges[side]);
  if (isOpen("left") && left === face) return null;
  if (isOpen("right") && right === face) return null;
  return { left, right, pieces: [first, last] };
}

/** Whether a whole tile at a side is no cut: the tile ends in the open, or turns round an outside corner. */
function endsOpen({ meets }: Edge): boolean {
  return meets.kind === "free" || meets.kind === "outside";
}
