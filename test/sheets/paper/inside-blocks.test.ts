import assert from "node:assert/strict";
import { groundOf } from "../../../src/sheets/paper/ground.js";
import { insideBlocks } from "../../../src/sheets/paper/inside-blocks.js";
import type { Table } from "../../../src/sheets/paper/paper.js";
import { nicheText } from "../../solver/insides/niche-text.js";
import { takeText } from "../../support/takeoff-text.js";

function blocksOf(text: string) {
  const { solved, taken } = takeText(text);
  const [wall] = solved.walls;
  return insideBlocks(groundOf(solved, [], taken, null), wall!, taken.walls[0]!);
}

describe("what a sheet tells of the inside of an opening", () => {
  const blocks = blocksOf(nicheText());
  const tables = blocks.filter((block): block is Table => block.kind === "table");

  it("has a heading, the order, and a word on waterproofing that defers to local code", () => {
    assert.deepEqual(blocks[0], { kind: "heading", text: "Inside niche shelf" });
    assert.match(
      JSON.stringify(blocks[1]),
      /Set the back first, then the sill and the head, then the sides.*waterproofed.*local code/,
    );
  });

  it("lists the surfaces with their sizes and counts", () => {
    assert.deepEqual(tables[0]!.rows, [
      ["back", "402 mm", "301 mm", "field", "2 mm", "3", "6", "6"],
      ["left side", "101 mm", "304 mm", "field", "2 mm", "3", "3", "3"],
      ["right side", "101 mm", "304 mm", "field", "2 mm", "3", "3", "3"],
      ["sill", "402 mm", "101.1 mm", "field", "2 mm", "1", "2", "2"],
      ["head", "402 mm", "101 mm", "field", "2 mm", "1", "2", "2"],
    ]);
  });

  it("lists the cuts of all of them, and their soft joints", () => {
    const goes = tables[1]!.rows.map((row) => row.at(-1)).join(" ");
    for (const label of ["B.shelf.back-01-01", "B.shelf.sill-01-02", "B.shelf.left-01-01"]) {
      assert.ok(goes.includes(label), goes);
    }
    const beads = tables.at(-1)!.rows.map(([along]) => along);
    // Each corner once, told with the surface that covers the other.
    assert.deepEqual(beads, [
      "left side, right",
      "left side, bottom",
      "left side, top",
      "right side, left",
      "right side, bottom",
      "right side, top",
      "sill, top",
      "head, bottom",
    ]);
  });

  it("is nothing where no opening is tiled inside", () => {
    assert.deepEqual(blocksOf(nicheText({ niche: "" })), []);
  });
});
