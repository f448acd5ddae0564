import assert from "node:assert/strict";
import { columnWidths } from "../../../src/sheets/print/column-widths.js";
import { tableOf } from "./kit.js";

/** Every letter is 10 wide. */
const measure = (text: string): number => 10 * text.length;
const sum = (widths: readonly number[]): number => widths.reduce((total, each) => total + each, 0);

describe("the columns of a table", () => {
  it("are as wide as their longest cells where all fit, and a little more", () => {
    const widths = columnWidths(tableOf(9), 130, measure);
    assert.deepEqual(
      widths,
      [70, 60],
      "Course: 60, whole: 50, and half of the 20 left over for each",
    );
    assert.deepEqual(columnWidths(tableOf(9), 1000, measure), [90, 80], "30 more at most");
  });

  it("give way where they have more than their longest word", () => {
    const widths = columnWidths(tableOf(9, "set the first course dry"), 160, measure);
    assert.deepEqual(widths, [60, 100]);
  });

  it("are such that the table has few lines: many short cells go before one long one", () => {
    const row = ["cut", "at left and top"];
    const long = ["set the first course dry ".repeat(4), "at left"];
    const table = {
      kind: "table",
      caption: "",
      columns: [
        { title: "what", align: "left" },
        { title: "where", align: "left" },
      ],
      rows: [row, row, row, long, row],
    } as const;
    const [, short] = columnWidths(table, 500, measure);
    assert.ok(short! >= 150, "none of the four is broken");
    const [wide] = columnWidths({ ...table, rows: [long] }, 500, measure);
    assert.ok(wide! > 500 - 150, "alone, the long one has more");
  });

  it("keep a figure and its unit together", () => {
    const [, what] = columnWidths(tableOf(1, "4 3/4 in wide or so"), 150, measure);
    assert.ok(what! >= measure("4 3/4 in"));
  });

  it("share the room where not even words fit", () => {
    const widths = columnWidths(tableOf(2, "incomprehensibilities"), 100, measure);
    assert.ok(Math.abs(sum(widths) - 100) < 1e-9);
  });
});
