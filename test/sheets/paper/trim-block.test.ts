import assert from "node:assert/strict";
import { trimBlocks } from "../../../src/sheets/paper/trim-block.js";
import { exampleGround, tableOf, wallOf } from "./sheet-bench.js";

describe("the trim of a wall", () => {
  const ground = exampleGround("three-walls.tileplan");
  const rows = (name: string) => tableOf(trimBlocks(ground, wallOf(ground, name))).rows;

  it("is told by equal lengths, with the hands of mitres and where it goes", () => {
    // A mitred frame has as many left hands as right ones.
    const hands = rows("back").map(([, , ends, count]) => [ends, Number(count)] as const);
    const sum = (hand: string) =>
      hands.filter(([ends]) => ends === hand).reduce((total, [, count]) => total + count, 0);
    assert.equal(sum("left"), 4);
    assert.equal(sum("right"), 4);
    assert.ok(rows("back").some((row) => row[4]!.includes("sash bottom")));
  });

  it("is each wall's own", () => {
    assert.ok(rows("left").every((row) => row[4]!.startsWith("left end")));
    const places = (name: string) => rows(name).reduce((sum, row) => sum + Number(row[3]), 0);
    const all = ground.takeoff.trims.flatMap(({ pieces }) => pieces);
    assert.equal(
      places("left") + places("back") + places("plumbing"),
      all.reduce((sum, { count }) => sum + count, 0),
    );
  });

  it("is nothing on a wall without trim", () => {
    const bare = exampleGround("niche-wall.tileplan");
    assert.deepEqual(trimBlocks(bare, wallOf(bare, "north")), []);
  });
});
