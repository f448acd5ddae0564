import assert from "node:assert/strict";
import Papa from "papaparse";
import { spreadsheet } from "../../../src/sheets/csv/spreadsheet.js";

const sheet = (...cells: (string | number | null)[]) =>
  [...spreadsheet(["A"], [cells.map((cell) => [cell])])].join("");

/** The cells of the only column, as another library reads them. */
function read(text: string): string[] {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), {
    delimiter: ",",
    newline: "\r\n",
  });
  assert.deepEqual(errors, []);
  return data.slice(1, -1).map(([cell]) => cell!);
}

describe("a spreadsheet", () => {
  it("is marked as UTF-8 and has lines that end by CR LF", () => {
    assert.equal(sheet("ä", 2.5, null), "\uFEFFA\r\nä\r\n2.5\r\n\r\n");
  });

  it("keeps quotes, commas and line breaks inside their cell", () => {
    const cells = ['1/8" joint, soft', "one\ntwo", "a;b"];
    const rows = cells.map((cell) => [cell, "x"]);
    const text = [...spreadsheet(["A", "B"], [rows])].join("");
    const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { skipEmptyLines: true });
    assert.deepEqual(data.slice(1), rows);
  });

  it("lets no cell become a formula", () => {
    const cells = ["=1+1", "+1", "-3/16 in", "@SUM(A1)", "\tx"];
    assert.deepEqual(
      read(sheet(...cells)),
      cells.map((cell) => `'${cell}`),
    );
  });

  it("lets no text become a number, a fraction, a date or a time", () => {
    const cells = ["3/16", "5 7/8", "5-7/8", "7-8", "12.5.2026", "10:30", "1E5", "007", "12%"];
    const months = ["MAY-05-03", "Jan 5", "3 Mar", "DEC-1-2", "5-oct"];
    for (const cell of [...cells, ...months])
      assert.deepEqual(read(sheet(cell)), [`'${cell}`], cell);
  });

  it("leaves alone what reads as text, and numbers that are numbers", () => {
    const cells = [
      "2 5/8 in",
      "B-05-03",
      "7B",
      "3 x 6 pressed wall tile, white",
      "rip",
      "M-05-03",
      "",
    ];
    assert.deepEqual(read(sheet(...cells)), cells);
    assert.deepEqual(read(sheet(66.675)), ["66.675"]);
  });

  it("joins its parts under one head", () => {
    const text = [...spreadsheet(["A"], [[["x"]], [], [["y"]]])].join("");
    assert.deepEqual(read(text), ["x", "y"]);
  });
});
