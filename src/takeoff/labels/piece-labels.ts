import { countingLay, type Numbering } from "../../solver/index.js";

/** The least digits of a course or a place in a label; larger numbers take more. */
const DIGITS = 2;

/**
 * What is written on the back of each piece of a lay: wall, course and place, such as `B-05-03`; where a lay's courses
 * are counted by themselves, with its name (`B-liner-01-03`). Further parts of one tile have a letter
 * from `b` on, as in the piece's id.
 */
export function pieceLabels(mark: string, numbered: Numbering): (i: number) => string {
  const { pieces, below } = numbered;
  const lay = countingLay(numbered);
  const begin = lay === null ? mark : `${mark}-${lay}`;
  return (i) => {
    const part = pieces.part[i]!;
    const letter = part === 0 ? "" : String.fromCharCode("a".charCodeAt(0) + Math.min(part, 25));
    return `${begin}-${padded(below + pieces.course[i]!)}-${padded(pieces.column[i]!)}${letter}`;
  };
}

function padded(number: number): string {
  return `${number}`.padStart(DIGITS, "0");
}
