import type { Nm } from "../../measure/index.js";
import { isSetCourse, pieceBounds, type SolvedLay, type SolvedWall } from "../../solver/index.js";
import { across, down } from "../picture.js";
import type { RuledLine } from "../scene.js";

/**
 * Along the top of what is set already: where the tile that is still to come begins. Of a block of which courses were
 * set on several days, the last day's.
 */
export function setLines({ lays }: SolvedWall): RuledLine[] {
  return lays.flatMap((lay, i) => {
    const over = lays[i + 1];
    if (!lay.stand || (over?.stand && over.lay.origin === lay.lay.origin)) return [];
    const last = lay.courses.filter(({ number }) => isSetCourse(lay, number)).at(-1);
    return last ? topsOf(lay, last.number).map(lineOf) : [];
  });
}

interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
  readonly y: Nm;
}

/** The tops of a course's pieces, as far as they follow each other at one height with no more than a joint between. */
function topsOf({ pieces, lattice }: SolvedLay, course: number): Stretch[] {
  const tops: Stretch[] = [];
  for (let i = 0; i < pieces.count; i++) {
    if (pieces.course[i] !== course) continue;
    const { left, right, top } = pieceBounds(pieces, i);
    const before = tops.at(-1);
    if (before?.y === top && left - before.to <= lattice.joint)
      tops[tops.length - 1] = { ...before, to: right };
    else tops.push({ from: left, to: right, y: top });
  }
  return tops;
}

function lineOf({ from, to, y }: Stretch): RuledLine {
  return { kind: "set", points: [across(from), down(y), across(to), down(y)] };
}
