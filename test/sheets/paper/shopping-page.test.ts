import assert from "node:assert/strict";
import { countWords, shoppingPage } from "../../../src/sheets/paper/shopping-page.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { planOf, wallText } from "../setting-out/plans.js";
import { groundFor, tableOf, wordsOf } from "./sheet-bench.js";

const TILE = 'box 20\n  price 42.50 a box\n  breakage 3%\n  spares 6\n  lot "7B"';

function page(more = "") {
  return shoppingPage(groundFor(planOf(wallText()).replace("face 4 x 4", `face 4 x 4\n  ${more}`)));
}

describe("the shopping list", () => {
  it("says what to buy, how much is needed and how that comes about", () => {
    // 10 x 6 pieces: 45 whole; 9 rips, 5 crosscuts and a corner, none of which share a tile.
    const { rows, columns } = tableOf(page().blocks, "To buy");
    assert.equal(columns.length, 5);
    assert.deepEqual(rows[0], [
      "4 x 4 tile",
      "–",
      "60 pieces",
      "60 tiles",
      "45 whole; 15 cut up into 15 pieces",
    ]);
  });

  it("tells boxes, breakage, spares, the lot and the cost where the plan states them", () => {
    // 60 needed, 2 for breakage (3 % rounded up), 6 spares: 68, so 4 boxes of 20.
    const { blocks } = page(TILE);
    const { rows } = tableOf(blocks, "To buy");
    assert.deepEqual(rows[0], [
      "4 x 4 tile",
      "7B",
      "4 boxes",
      "60 tiles",
      "45 whole; 15 cut up into 15 pieces; 2 for breakage; 6 spares of the same lot; 4 boxes of 20, 12 over",
      "170.00",
    ]);
    assert.match(wordsOf(blocks), /Cost of what the plan gives a price for: 170\.00/);
  });

  it("invents no cost, breakage or spares where the plan states none", () => {
    const words = wordsOf(page().blocks);
    assert.doesNotMatch(words, /Cost/);
    assert.match(words, /The plan allows for no breakage\. The plan asks for no spares\./);
    assert.match(words, /grout.*the plan doesn't say its density/);
  });

  it("tells the waste in four parts, never as one percentage", () => {
    const { rows, columns } = tableOf(page(TILE).blocks, "Where the tile goes");
    assert.deepEqual(
      columns.map(({ title }) => title),
      ["Tile", "Offcuts", "Breakage, tiles", "Filling the last box, tiles", "Spares, tiles"],
    );
    assert.deepEqual(rows[0]!.slice(2), ["2", "12", "6"]);
  });

  it("tells the saw's work and the kerf that is reckoned with", () => {
    assert.match(
      wordsOf(page().blocks),
      /kerf of 3\/32 in \(common practice; the plan names none\)/,
    );
  });

  it("tells mitred edges of tile beside mitred ends of trim", () => {
    assert.match(
      wordsOf(shoppingPage(groundFor(mitredText())).blocks),
      /0 mitres of trim, 16 mitred edges of tile \(47 1\/8 in in all\)/,
    );
    assert.doesNotMatch(wordsOf(page().blocks), /of tile \(/);
  });

  it("is empty where nothing is laid", () => {
    const { blocks } = shoppingPage(groundFor("units inch\n"));
    assert.equal(wordsOf(blocks), "Nothing is laid, so nothing is bought.");
  });

  it("counts boxes as boxes", () => {
    assert.equal(countWords(1, "box"), "1 box");
    assert.equal(countWords(2, "tube"), "2 tubes");
  });

  it("counts what is still to come where courses are set, beside the whole job", () => {
    const text = planOf(wallText()).replace(
      /(\n\s*)joint 1\/8\n/,
      "$1joint 1/8$1set courses 1 to 2\n",
    );
    const { blocks } = shoppingPage(groundFor(text));
    const rows = tableOf(blocks, "To buy").rows;
    // Two courses of nine whole tiles and an end: 20 of the 60.
    assert.deepEqual(rows[0]!.slice(2, 4), ["40 pieces", "40 tiles still to come, of 60"]);
    assert.match(rows[0]![4]!, /; 20 tiles used already/);
    assert.match(rows.find(([what]) => what === "mortar")![3]!, /sq ft to set, of \S+ sq ft/);
    assert.match(
      wordsOf(blocks),
      /20 of them are used: .* 40 still to come\. What of it is at hand already/,
    );
  });
});
