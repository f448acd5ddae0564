import assert from "node:assert/strict";
import { exampleGround, groundFor } from "../paper/sheet-bench.js";
import { readSheet, sheetText } from "./read-sheet.js";

describe("a sheet as JSON", () => {
  const ground = exampleGround("three-walls.tileplan");
  const sheet = readSheet(ground);

  it("has its keys, the plan and the revision", () => {
    assert.deepEqual(Object.keys(sheet), [
      ...["schema", "plan", "revision", "units", "order", "cautions", "walls"],
      ...["tiles", "trims", "materials", "saw", "diagnostics"],
    ]);
    assert.deepEqual(
      [sheet.schema, sheet.plan, sheet.revision],
      [1, "Larch House, garden bath", "r1"],
    );
  });

  it("has every wall, the order of work, and what the sheet warns of", () => {
    assert.deepEqual(
      sheet.walls.map(({ name, mark }) => [name, mark]),
      [
        ["left", "L"],
        ["back", "B"],
        ["plumbing", "P"],
      ],
    );
    assert.ok(sheet.order.length > 10);
  });

  it("is the same text for the same plan", () => {
    assert.equal(sheetText(ground), sheetText(exampleGround("three-walls.tileplan")));
  });

  it("is whole for a plan without walls", () => {
    assert.deepEqual(readSheet(groundFor("units inch\n")).walls, []);
  });
});
