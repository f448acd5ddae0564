import stringWidth from "string-width";
import type { SourceRange } from "../model/index.js";
import { harmless } from "./harmless.js";

/** One line of a text as a terminal shows it, with what to underline. */
export interface SourceLine {
  /** From one, as people count. */
  readonly number: number;
  readonly text: string;
  /** Blanks up to the range, then carets under it. */
  readonly underline: { readonly indent: string; readonly carets: string };
}

/** A tab goes to the next of these columns. */
const TAB = 4;
/** A longer line is shown round its range. */
const LONGEST_SHOWN = 160;
/** How much of a long line is shown before its range. */
const LEAD = 40;

/** The lines of a text, as editors count them. */
export function linesOf(text: string): readonly string[] {
  return text.split(/\r\n|\r|\n/);
}

/**
 * The first line of a range, ready for a terminal: tabs as blanks, control characters (which could
 * drive the terminal, or hide what is there) as signs, wide characters underlined in full.
 * null when the text has no such line.
 */
export function sourceLine(lines: readonly string[], range: SourceRange): SourceLine | null {
  const { line, character } = range.start;
  const whole = lines[line];
  if (whole === undefined) return null;
  const start = Math.min(character, whole.length);
  const end =
    range.end.line > line ? whole.trimEnd().length : Math.min(range.end.character, whole.length);
  const from = whole.length > LONGEST_SHOWN ? Math.max(0, start - LEAD) : 0;
  const upTo = Math.min(whole.length, from + LONGEST_SHOWN);
  const before = shown(whole.slice(from, start), 0);
  const marked = shown(whole.slice(start, Math.min(end, upTo)), before.width);
  const after = shown(
    whole.slice(Math.max(start, Math.min(end, upTo)), upTo),
    before.width + marked.width,
  );
  const lead = from > 0 ? "…" : "";
  const tail = upTo < whole.length ? "…" : "";
  return {
    number: line + 1,
    text: `${lead}${before.text}${marked.text}${after.text.trimEnd()}${tail}`,
    underline: {
      indent: " ".repeat(lead.length + before.width),
      carets: "^".repeat(Math.max(1, marked.width)),
    },
  };
}

/** A stretch as the terminal shows it, beginning at a column. */
function shown(text: string, column: number): { text: string; width: number } {
  if (/^[ -~]*$/.test(text)) return { text, width: text.length };
  let out = "";
  let width = 0;
  for (const run of text.split(/(\t)/)) {
    const piece = run === "\t" ? " ".repeat(TAB - ((column + width) % TAB)) : harmless(run);
    out += piece;
    width += stringWidth(piece);
  }
  return { text: out, width };
}
