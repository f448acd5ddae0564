import type { Table } from "../paper/paper.js";
import { columnWidths } from "./column-widths.js";
import { type Flow, LEADING, SIZE } from "./flow.js";
import type { Weight } from "./sheet.js";

const STEP = SIZE.table * LEADING;
/** White at both sides of a cell's text, and over and under it. */
const PAD = { x: 5, y: 2.2 } as const;

/** Every other row stands on this grey, so that the eye keeps its row. */
const BAND = 0.94;

/** A table is begun where so many rows of it fit, and a short one where all of it does. */
const ROWS_TOGETHER = 3;
/** What share of a sheet's room a short table takes at most. */
const SHORT = 0.4;

/** A row's cells, each in its lines. */
type Row = readonly (readonly string[])[];

/**
 * A table breaks between rows, under its head repeated; only a row that is taller than a sheet is
 * broken itself. Cells wrap: nothing is cut off.
 */
export function layTable(flow: Flow, table: Table): void {
  new TableLayer(flow, table).lay();
}

class TableLayer {
  readonly #widths: readonly number[];
  readonly #head: Row;
  #banded = false;

  constructor(
    private readonly flow: Flow,
    private readonly table: Table,
  ) {
    const measure = (text: string, weight: Weight): number =>
      flow.faces.widthOf(flow.printable(text), SIZE.table, weight) + 2 * PAD.x;
    this.#widths = columnWidths(table, flow.width, measure);
    this.#head = this.#wrapped(
      table.columns.map(({ title }) => title),
      "bold",
    );
  }

  lay(): void {
    const { flow, table } = this;
    const rows = table.rows.map((cells) => this.#wrapped(cells, "regular"));
    flow.space(6);
    const caption = flow.wrap(table.caption, flow.width, SIZE.table, "bold");
    const captionHeight = table.caption === "" ? 0 : caption.length * STEP + 2;
    const over = captionHeight + heightOf(this.#head);
    const whole = over + heightsOf(rows);
    const begun = over + heightsOf(rows.slice(0, ROWS_TOGETHER));
    flow.need(Math.min(whole <= SHORT * flow.fullRoom ? whole : begun, flow.fullRoom));
    if (captionHeight > 0) {
      for (const line of caption) flow.line(line, flow.left, flow.take(STEP), SIZE.table, "bold");
      flow.take(2);
    }
    this.#layHead();
    for (const row of rows) this.#layRow(row);
    this.#rule(0.8);
    flow.take(6);
  }

  #wrapped(cells: readonly string[], weight: Weight): Row {
    return this.#widths.map((width, i) =>
      this.flow.wrap(cells[i] ?? "", width - 2 * PAD.x, SIZE.table, weight),
    );
  }

  #layHead(): void {
    this.#rule(0.8);
    this.#layCells(this.#head, "bold");
    this.#rule(0.8);
    this.#banded = false;
  }

  #layRow(row: Row): void {
    const { flow } = this;
    if (heightOf(row) > flow.room && !flow.empty) this.#goOn();
    let rest = row;
    while (heightOf(rest) > flow.room) {
      const fit = Math.max(1, Math.floor((flow.room - 2 * PAD.y) / STEP));
      this.#layCells(
        rest.map((lines) => lines.slice(0, fit)),
        "regular",
      );
      rest = rest.map((lines) => lines.slice(fit));
      this.#goOn();
    }
    this.#layCells(rest, "regular");
    this.#banded = !this.#banded;
  }

  #goOn(): void {
    this.#rule(0.8);
    this.flow.begin();
    this.#layHead();
  }

  #layCells(row: Row, weight: Weight): void {
    const { flow, table } = this;
    const height = heightOf(row);
    const top = flow.take(height);
    const { left } = flow;
    const width = this.#widths.reduce((sum, each) => sum + each, 0);
    if (this.#banded && weight === "regular") {
      flow.put({ kind: "box", left, top, width, height, fill: BAND, outline: null });
    }
    let x = left;
    row.forEach((lines, i) => {
      const right = x + this.#widths[i]! - PAD.x;
      lines.forEach((line, n) => {
        const at =
          table.columns[i]!.align === "right"
            ? right - flow.faces.widthOf(line, SIZE.table, weight)
            : x + PAD.x;
        flow.line(line, at, top + PAD.y + n * STEP, SIZE.table, weight);
      });
      x += this.#widths[i]!;
    });
  }

  #rule(weight: number): void {
    const { left, y } = this.flow;
    const right = left + this.#widths.reduce((sum, each) => sum + each, 0);
    this.flow.put({ kind: "rule", points: [left, y, right, y], weight, dash: [] });
  }
}

function heightsOf(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + heightOf(row), 0);
}

function heightOf(row: Row): number {
  return Math.max(1, ...row.map((lines) => lines.length)) * STEP + 2 * PAD.y;
}
