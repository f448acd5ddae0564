import assert from "node:assert/strict";
import { summarise } from "../../src/compare/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

describe("compare", () => {
  it("is plain data, which another thread can be sent", () => {
    const comparison = comparisonOf(WALL, edited(WALL, ["bond stack", "bond running 1/3"]));
    assert.deepEqual(JSON.parse(JSON.stringify(comparison)), comparison);
    assert.deepEqual(structuredClone(comparison), comparison);
  });

  it("works out what is bought once", () => {
    const comparison = comparisonOf(WALL, edited(WALL, ["bond stack", "bond running 1/3"]));
    assert.equal(comparison.quantities, comparison.quantities);
  });

  it("tells every wall, also one on which nothing changed", () => {
    const two = `${WALL}${WALL.slice(WALL.indexOf("wall back")).replace("wall back", "wall side")}`;
    const { walls } = comparisonOf(two, edited(two, ["at 16 5/8", "at 16 1/2"]));
    assert.deepEqual(
      walls.map(({ name }) => name.after),
      ["back", "side"],
    );
  });

  it("tells findings before in the units after, so that another unit is no change", () => {
    const narrow = edited(WALL, ["variation 1/64", "variation 1/16"]);
    const metric = narrow
      .replace("units inch", "units mm")
      .replace("4 x 4 tile", "TITLE")
      .replace(/\d+ \d+\/\d+|\d+\/\d+|\b\d+\b/g, (length) => `${length}in`)
      .replace("TITLE", "4 x 4 tile")
      .replace("box 25in", "box 25");
    assert.deepEqual(summarise(comparisonOf(narrow, metric)), []);
  });

  it("survives plans with nothing in them", () => {
    assert.deepEqual(summarise(comparisonOf("", "")), []);
    assert.equal(comparisonOf("", WALL).walls[0]?.name.before, null);
    assert.equal(comparisonOf(WALL, "wall {").walls[0]?.name.after, null);
  });
});
