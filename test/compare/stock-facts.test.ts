import assert from "node:assert/strict";
import { comparisonText } from "../../src/compare/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

/** What is told of a change to the stock, under the first heading. */
function told(...edits: readonly (readonly [string, string])[]): string[] {
  const text = [...comparisonText(comparisonOf(WALL, edited(WALL, ...edits)))].join("");
  return text.split("\n").filter((line) => line.startsWith("  ") && line.includes(" -> "));
}

const TILE = "variation 1/64";

describe("the facts of stock", () => {
  it("are how a tile is bought", () => {
    const stated = `${TILE}\n  directional\n  lot "7B"\n  price 42.50 a piece\n  breakage 3%\n  spares 6`;
    assert.deepEqual(told([TILE, stated]), [
      "  tile field, direction: may be turned -> may not be turned",
      "  tile field, lot: not stated -> 7B",
      "  tile field, price: not stated -> 42.50 a piece",
      "  tile field, breakage: not stated -> 3%",
      "  tile field, spares: not stated -> 6",
    ]);
  });

  it("are those of saw, mortar, grout and sealant, each by itself", () => {
    const before = [
      'mortar "white" {\n  bag 50 lb covers 90 sqft\n}',
      'grout "grey" {\n  density 1.6\n}',
    ].join("\n");
    const after = [
      "saw {\n  kerf 3/32\n}",
      'mortar "white" {\n  bag 50 lb covers 95 sqft\n  price 24 a bag\n}',
      'grout "bone" {\n  density 1.65\n}',
      "sealant {\n  tube 10.1 floz\n}",
    ].join("\n");
    const old = edited(WALL, ["bed 1/8", `bed 1/8\n${before}`]);
    const now = edited(WALL, ["bed 1/8", `bed 1/8\n${after}`]);
    const text = [...comparisonText(comparisonOf(old, now))].join("");
    assert.deepEqual(
      text.split("\n").filter((line) => line.includes(" -> ")),
      [
        "  saw, kerf: not stated -> 3/32 in",
        "  mortar, bag covers: 90 sq ft -> 95 sq ft",
        "  mortar, price: not stated -> 24.00 a bag",
        '  grout, title: "grey" -> "bone"',
        "  grout, density: 1.6 g/cm³ -> 1.65 g/cm³",
        "  sealant, tube: not stated -> 10.1 fl oz",
      ],
    );
  });

  it("are none where another text says the same", () => {
    assert.deepEqual(
      comparisonOf(
        edited(WALL, ["bed 1/8", "bed 1/8\ngrout {\n  bag 16 oz\n}"]),
        edited(WALL, ["bed 1/8", "grout {\n  bag 1lb # a small one\n}\nbed 1/8"]),
      ).facts,
      [],
    );
  });
});
