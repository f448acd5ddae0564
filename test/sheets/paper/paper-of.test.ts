import assert from "node:assert/strict";
import { paperOf } from "../../../src/sheets/paper/paper-of.js";
import { exampleNames } from "../../support/examples.js";
import { exampleGround, pageOf, tableOf } from "./sheet-bench.js";

function paper(name: string, revision: string | null = "3ac1") {
  const { solved, diagnostics, takeoff } = exampleGround(name);
  return paperOf(solved, diagnostics, takeoff, { revision });
}

describe("paperOf", () => {
  it("has a page for the whole job, one a wall, the shopping list, and each wall's poles", () => {
    const { pages, title, revision } = paper("three-walls.tileplan");
    assert.deepEqual(
      pages.map(({ id }) => id),
      [
        ...["plan", "wall-left", "wall-back", "wall-plumbing", "shopping-list"],
        ...["poles-left", "poles-back", "poles-plumbing"],
      ],
    );
    assert.deepEqual([title, revision], ["Larch House, garden bath", "3ac1"]);
    assert.equal(pageOf(pages, "wall-back").wall, "back");
  });

  it("makes the same paper of the same plan", () => {
    assert.deepEqual(paper("back-wall.tileplan"), paper("back-wall.tileplan"));
  });

  it("fills every table of every example, as many cells as columns", () => {
    for (const name of exampleNames()) {
      for (const { blocks } of paper(name).pages) {
        for (const block of blocks) if (block.kind === "table") tableOf([block]);
      }
    }
  });

  it("has a cover and an empty list for a stock list without walls", () => {
    const { pages } = paper("stock.tileplan");
    assert.deepEqual(
      pages.map(({ id }) => id),
      ["plan", "shopping-list"],
    );
  });
});
