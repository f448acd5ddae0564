import { countingLay, type SolvedLay } from "../solver/index.js";

/** `course 6`, as a person counts it who reads the wall. */
export function courseName(lay: SolvedLay, course: number): string {
  return `course ${lay.below + course}${whose(lay)}`;
}

/** `courses 1 to 6`, `course 1 of panel`: what of a lay is set; null where nothing is. */
export function setName(lay: SolvedLay): string | null {
  const { set } = lay.lay;
  if (!set) return null;
  const [from, to] = [lay.below + set.from, lay.below + set.to];
  return from === to ? courseName(lay, set.to) : `courses ${from} to ${to}${whose(lay)}`;
}

function whose(lay: SolvedLay): string {
  const counting = countingLay(lay);
  return counting === null ? "" : ` of ${counting}`;
}

/** What the message of a finding ends with whose pieces are set. */
export function setWords(courses: string): string {
  return `; ${courses} ${courses.startsWith("courses") || courses.includes(" and ") ? "are" : "is"} set: it can no longer be mended`;
}
