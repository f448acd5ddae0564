import { NM_PER, type Nm } from "../../src/measure/index.js";
import { cutOf, type SolvedLay } from "../../src/solver/index.js";

/** Whole nanometres of a length in inches; the length must be exact. */
export function inches(length: number): Nm {
  const nm = length * NM_PER.inch;
  if (!Number.isInteger(nm)) throw new RangeError(`${length} in is no whole number of nanometres`);
  return nm;
}

/** The widths of a course's pieces, left to right. */
export function widthsOf({ pieces }: SolvedLay, course = 1): Nm[] {
  return indicesOf(pieces, course).map((i) => pieces.bounds[4 * i + 2]! - pieces.bounds[4 * i]!);
}

/** The heights of the courses' first pieces, from the bottom up. */
export function heightsOf({ pieces, courses }: SolvedLay): Nm[] {
  return courses.map(({ number }) => {
    const i = pieces.courseStart[number - 1]!;
    return pieces.bounds[4 * i + 3]! - pieces.bounds[4 * i + 1]!;
  });
}

/** How many pieces are whole tiles. */
export function wholeCount({ pieces }: SolvedLay): number {
  let count = 0;
  for (let i = 0; i < pieces.count; i++) if (cutOf(pieces, i) === "none") count++;
  return count;
}

function indicesOf({ courseStart }: SolvedLay["pieces"], course: number): number[] {
  const from = courseStart[course - 1]!;
  return Array.from({ length: courseStart[course]! - from }, (_, k) => from + k);
}
