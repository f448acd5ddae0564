import type { Nm } from "../../measure/index.js";
import {
  type Chain,
  pieceBounds,
  rangeBetween,
  type SolvedLay,
  type SolvedWall,
  valueAt,
  visibleBounds,
} from "../../solver/index.js";
import { bareSideOf, placesAlong } from "./bare-sides.js";
import { acrossRow, secondBefore, secondPast } from "./tile-row.js";

/** An upright line near one end of a wall: where course 1's second tile from that end begins. */
export interface PlumbLine {
  readonly side: "left" | "right";
  /** From the wall's left substrate at the level line. */
  readonly x: Nm;
  /** How far the bare wall's end lies from it, at each reading (else at the bottom and the top). */
  readonly fromEnd: readonly { readonly at: Nm; readonly distance: Nm }[];
  /** How wide that end's pieces are, in course 1 and in those that alternate with it. */
  readonly ends: readonly EndCut[];
}

export interface EndCut {
  readonly course: number;
  readonly width: Nm;
  /** Less than the width where another wall's tile covers some of it. */
  readonly seen: Nm;
}

/** A running bond's courses repeat after q; more than these would say the same once more. */
const MOST_COURSES_TOLD = 3;

/** The plumb lines of a wall, left then right; none where no tile fits between the end ones. */
export function plumbLines(wall: SolvedWall, lay: SolvedLay): PlumbLine[] {
  const { region } = wall;
  const row = acrossRow(lay.lattice, 1);
  const reach = (chain: Chain) => rangeBetween(chain, region.bounds.bottom, region.bounds.top);
  const left = secondPast(row, reach(region.left).high);
  const right = secondBefore(row, reach(region.right).low);
  if (right <= left) return [];
  return [
    { side: "left", x: left, fromEnd: distances(wall, "left", left), ends: endCuts(lay, "left") },
    {
      side: "right",
      x: right,
      fromEnd: distances(wall, "right", right),
      ends: endCuts(lay, "right"),
    },
  ];
}

function distances({ wall }: SolvedWall, side: "left" | "right", x: Nm): PlumbLine["fromEnd"] {
  const bare = bareSideOf(wall, side);
  return placesAlong(wall, side).map((at) => ({ at, distance: Math.abs(x - valueAt(bare, at)) }));
}

function endCuts(lay: SolvedLay, side: "left" | "right"): EndCut[] {
  const { pieces, courses, lattice } = lay;
  const told = courses.slice(0, Math.min(lattice.q, MOST_COURSES_TOLD));
  return told.flatMap(({ number }, i) => {
    const first = pieces.courseStart[i]!;
    const last = pieces.courseStart[i + 1]! - 1;
    if (last < first) return [];
    const piece = side === "left" ? first : last;
    const box = pieceBounds(pieces, piece);
    const seen = visibleBounds(pieces, piece);
    return [
      {
        course: lay.below + number,
        width: box.right - box.left,
        seen: seen ? seen.right - seen.left : 0,
      },
    ];
  });
}
