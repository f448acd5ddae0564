import type { Position, SourceRange } from "../model/index.js";

/** A stretch of a text by offsets in UTF-16 units; `end` is just past its last. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Turns offsets of one text into lines and characters. */
export interface LineTable {
  /** The line of an offset, from zero. */
  readonly lineOf: (offset: number) => number;
  readonly position: (offset: number) => Position;
  readonly range: (span: Span) => SourceRange;
}

/** Lines end at LF, CR LF or CR, as editors count them. Offsets outside the text are drawn in to it. */
export function tableLines(text: string): LineTable {
  const starts = lineStarts(text);
  const lineOf = (offset: number): number => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const position = (offset: number): Position => {
    const inside = Math.min(Math.max(offset, 0), text.length);
    const line = lineOf(inside);
    return { line, character: inside - starts[line]! };
  };
  const range = ({ start, end }: Span): SourceRange => ({
    start: position(start),
    end: position(Math.max(start, end)),
  });
  return { lineOf, position, range };
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (const found of text.matchAll(/\r\n|\n|\r/g)) starts.push(found.index + found[0].length);
  return starts;
}
