import assert from "node:assert/strict";
import { partChanges } from "../../src/compare/plan-facts.js";
import { comparisonOf, edited, WALL } from "./wall.js";

function factNames(...edits: readonly (readonly [string, string])[]): string[] {
  return comparisonOf(WALL, edited(WALL, ...edits)).facts.map(({ name }) => name);
}

describe("the facts of a plan", () => {
  it("are its title, its bed and its limits", () => {
    assert.deepEqual(factNames(['plan "Test bench"', 'plan "Bench"']), ["title"]);
    assert.deepEqual(factNames(["bed 1/8", "bed 1/4"]), ["bed"]);
    assert.deepEqual(factNames(["bed 1/8", "bed 1/8\nrules { sliver off }"]), ["limit"]);
  });

  it("are those of a tile that is laid", () => {
    assert.deepEqual(factNames(["face 4 x 4", "face 4 x 3 7/8"]), ["face"]);
    assert.deepEqual(factNames(["variation 1/64", "edges pressed"]), ["variation", "edges"]);
    assert.deepEqual(factNames(["variation 1/64", "variation 1/64\n  warpage 1/32"]), ["warpage"]);
    // The trim is laid nowhere.
    assert.deepEqual(factNames(["face 6 x 2", "face 6 x 3"]), []);
  });
});

describe("partChanges", () => {
  it("tells those that are new, gone or renamed", () => {
    const part = (name: string) => ({ name });
    const changes = [
      { before: part("a"), after: part("a") },
      { before: part("b"), after: part("c") },
      { before: null, after: part("d") },
    ];
    assert.deepEqual(partChanges("tile", changes), [
      { kind: "tile", name: { before: "b", after: "c" } },
      { kind: "tile", name: { before: null, after: "d" } },
    ]);
  });
});
