import assert from "node:assert/strict";
import { layTable } from "../../../src/sheets/print/lay-table.js";
import { faultsOf, newFlow, tableOf, textsOf, wordsOf } from "./kit.js";

const LONG = "Set the first uncut course dry along the ledger before mortar is mixed. ".repeat(3);

describe("a table", () => {
  it("breaks between rows, with its head repeated", () => {
    const flow = newFlow();
    layTable(flow, tableOf(100, LONG));
    const sheets = flow.finish();
    assert.ok(sheets.length > 3);
    for (const sheet of sheets) {
      assert.deepEqual(faultsOf(sheet), []);
      assert.equal(wordsOf(sheet).filter((word) => word === "Course").length, 1);
    }
    const numbers = sheets.flatMap(wordsOf).filter((word) => /^\d+$/.test(word));
    assert.deepEqual(
      numbers,
      Array.from({ length: 100 }, (_, i) => `${i + 1}`),
    );
  });

  it("has its figures end under each other", () => {
    const flow = newFlow();
    layTable(flow, tableOf(12));
    const [sheet] = flow.finish();
    const figures = textsOf(sheet!).filter(({ text }) => /^\d+$/.test(text));
    const ends = figures.map(({ x, width }) => Math.round((x + width) * 1000));
    assert.equal(new Set(ends).size, 1);
  });

  it("is kept whole when it is short", () => {
    const flow = newFlow();
    flow.line("before", flow.left, flow.take(flow.room - 80), 10);
    layTable(flow, tableOf(8));
    const [one, two] = flow.finish();
    assert.deepEqual(wordsOf(one!).slice(2), ["before"]);
    assert.equal(wordsOf(two!).filter((word) => /^\d+$/.test(word)).length, 8);
  });

  it("breaks a row that is taller than a sheet, and loses none of it", () => {
    const flow = newFlow();
    layTable(flow, tableOf(1, LONG.repeat(60)));
    const sheets = flow.finish();
    assert.ok(sheets.length > 1);
    for (const sheet of sheets) assert.deepEqual(faultsOf(sheet), []);
    const words = sheets.flatMap(wordsOf).join(" ");
    assert.equal(words.match(/mortar/g)!.length, 180);
  });

  it("marks every other row with grey, so that the eye keeps its row", () => {
    const flow = newFlow();
    layTable(flow, tableOf(6));
    const [sheet] = flow.finish();
    const bands = sheet!.marks.filter((mark) => mark.kind === "box");
    assert.equal(bands.length, 3);
    for (const band of bands) assert.ok(band.fill! > 0.9, "light enough for black letters");
  });

  it("stands without rows, too", () => {
    const flow = newFlow();
    layTable(flow, tableOf(0));
    const [sheet] = flow.finish();
    assert.ok(wordsOf(sheet!).includes("Course"));
  });
});
