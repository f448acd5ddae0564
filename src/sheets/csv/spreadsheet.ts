import { stringify } from "csv-stringify/sync";

/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

const MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";

/** What a spreadsheet takes for a number, a fraction, a date or a time: `3/16`, `5-7`, `1E5`, `MAY-05-03`. */
const READS_AS_OTHER = new RegExp(
  `^\\s*(?:[\\d.,:/\\s-]*\\d[\\d.,:/\\s-]*(?:e[+-]?\\d+)?%?|${MONTH}[\\s./-]*\\d.*|\\d+[\\s./-]*${MONTH}.*)$`,
  "i",
);

/**
 * Rows as CSV (RFC 4180) that a spreadsheet opens as they are, part by part: UTF-8 with its mark, lines
 * ended by CR LF. Text that would become a formula, a number or a date has an apostrophe before it,
 * as spreadsheets themselves mark text.
 */
export function* spreadsheet(
  columns: readonly string[],
  parts: Iterable<readonly (readonly Cell[])[]>,
): Generator<string> {
  yield stringify([[...columns]], { bom: true, record_delimiter: "windows" });
  for (const rows of parts) {
    yield stringify(
      rows.map((row) => row.map(asText)),
      { record_delimiter: "windows", escape_formulas: true },
    );
  }
}

function asText(cell: Cell): Cell {
  return typeof cell === "string" && READS_AS_OTHER.test(cell) ? `'${cell}` : cell;
}
