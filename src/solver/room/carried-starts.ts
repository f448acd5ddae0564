import type { Nm } from "../../measure/index.js";
import type { CarriedStart, Lay, Plan } from "../../model/index.js";
import { originBehind, restOf } from "../carry-start.js";
import { bareLine, endLine } from "../course-end.js";
import { courseBottom, courseShift, moduleUp } from "../lattice.js";
import { type BondEnd, gapBetween } from "./bond-miss.js";

/** A start that goes on from another wall. */
export interface Carried {
  /** The left edge of a tile of course 1. */
  readonly x: Nm;
  /** How a plan says it; null where it has no word for it. */
  readonly said: CarriedStart | null;
}

/**
 * The starts with which a wall goes on from another at their corner: course 1 by each way, and where the bonds differ any course
 * of their repeats. `isOver`: whether the corner is told of this wall; `isOnly`: whether they have no second corner, which
 * the words couldn't tell from this one.
 */
export function carriedStarts(
  plan: Plan,
  to: BondEnd,
  lay: Lay,
  from: BondEnd,
  isOver: boolean,
  isOnly: boolean,
): Carried[] {
  const [own, other] = [to.lattice, from.lattice];
  const isOneBond = own.p * other.q === other.p * own.q;
  const many = isOneBond ? 1 : own.q * other.q;
  const ahead = Math.round((own.y - other.y) / moduleUp(own));
  const ways = waysFrom(from.laid.wall.name, to.side);
  const gap = gapBetween(plan, to, from);
  const found: Carried[] = [];
  for (let course = 1; course <= many; course++) {
    const pair = { bottom: courseBottom(own, course), other: course + ahead };
    const shift = courseShift(own, course);
    const line = endLine(to.laid.region, to.side, pair.bottom, pair.bottom + own.face.up);
    const behind = { line, shown: from.at(pair.other).shown, gap };
    for (const way of ways) {
      const x = originBehind({ lay, joint: own.joint }, way, behind) - shift;
      found.push({ x, said: course === 1 && isOnly ? way : null });
    }
    found.push({ x: offcutOrigin(to, from, isOver, pair) - shift, said: null });
  }
  return found;
}

function waysFrom(wall: string, corner: "left" | "right"): CarriedStart[] {
  return [
    { kind: "wrapped", joint: "added", wall, corner },
    { kind: "wrapped", joint: "swallowed", wall, corner },
    { kind: "mirrored", wall, corner },
  ];
}

/** Where a tile stands that goes on with the offcut of the other's, the strip that is hidden of the wall under counting. */
function offcutOrigin(
  to: BondEnd,
  from: BondEnd,
  isOver: boolean,
  { bottom, other }: { readonly bottom: Nm; readonly other: number },
): Nm {
  const { face } = to.lattice;
  const end = from.at(other);
  const width = restOf(face.across, isOver ? end.cut : end.shown);
  const lineOf = isOver ? endLine : bareLine;
  const line = lineOf(to.laid.region, to.side, bottom, bottom + face.up);
  return to.side === "left" ? line + width - face.across : line - width;
}
