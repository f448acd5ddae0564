import assert from "node:assert/strict";
import Papa from "papaparse";
import { purchasesCsv } from "../../../src/sheets/csv/purchases-csv.js";
import { planOf, wallText } from "../setting-out/plans.js";
import { groundFor } from "../paper/sheet-bench.js";

function rows(tile: string): Record<string, string>[] {
  const text = planOf(wallText()).replace("face 4 x 4", `face 4 x 4\n  ${tile}`);
  const { solved, takeoff } = groundFor(text);
  const csv = [...purchasesCsv(solved, takeoff)].join("");
  return Papa.parse<Record<string, string>>(csv.slice(1), { header: true, skipEmptyLines: true })
    .data;
}

describe("the purchases as CSV", () => {
  it("are a row a thing to buy, the cost as a number", () => {
    const [tile] = rows('box 20\n  price 42.50 a box\n  lot "7B"');
    assert.deepEqual(
      [tile!.Kind, tile!.What, tile!.Lot, tile!.Buy, tile!.Unit, tile!.Cost],
      ["tile", "4 x 4 tile", "7B", "3", "box", "127.5"],
    );
  });

  it("keep a lot that looks like a date or a formula as it is written", () => {
    assert.equal(rows('lot "3/16"')[0]!.Lot, "'3/16");
    assert.equal(rows('lot "=2+2"')[0]!.Lot, "'=2+2");
  });

  it("are empty where the plan doesn't say", () => {
    const grout = rows("box 20").find(({ Kind }) => Kind === "grout")!;
    assert.deepEqual([grout.Buy, grout.Unit, grout.Cost], ["", "", ""]);
  });
});
