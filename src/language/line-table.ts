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
  /** The offset of a place; one past the end of its line or of the text is drawn in. */
  readonly offset: (position: Position) => number;
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
  const offset = ({ line, character }: Position): number => {
    if (line < 0) return 0;
    if (line >= starts.length) return text.length;
    const end = lineEnd(text, starts[line]!, starts[line + 1]);
    return Math.min(starts[line]! + Math.max(character, 0), end);
  };
  return { lineOf, position, range, offset };
}

/** Where a line's text ends, before its line end. */
function lineEnd(text: string, start: number, next: number | undefined): number {
  let end = next ?? text.length;
  while (end > start && /[\r\n]/.test(text[end - 1]!)) end--;
  return end;
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (const found of text.matchAll(/\r\n|\n|\r/g)) starts.push(found.index + found[0].length);
  return starts;
}
