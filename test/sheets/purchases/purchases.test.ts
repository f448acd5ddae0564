import assert from "node:assert/strict";
import { purchasesOf } from "../../../src/sheets/purchases/purchases.js";
import { planOf, wallText } from "../setting-out/plans.js";
import { exampleGround, groundFor } from "../paper/sheet-bench.js";

function purchases(text: string) {
  const { solved, takeoff } = groundFor(text);
  return purchasesOf(solved.plan, takeoff);
}

const STOCK = [
  'mortar "white thin-set" {\n  bag 50 lb covers 40 sqft\n  price 24 a bag\n}',
  'grout "bone" {\n  density 1.6\n  bag 25 lb\n  price 31 a bag\n}',
  'sealant "bone" {\n  tube 10.1 floz\n  depth 1/4\n  price 9 a tube\n}',
];

describe("what to buy", () => {
  it("is tile, trim and materials, each with its unit", () => {
    const { solved, takeoff } = exampleGround("three-walls.tileplan");
    const found = purchasesOf(solved.plan, takeoff);
    assert.deepEqual(
      found.map(({ kind, unit }) => [kind, unit]),
      [
        ["tile", "box"],
        ["trim", "piece"],
        ["mortar", "bag"],
        ["grout", "bag"],
        ["sealant", "tube"],
        ["membrane", null],
      ],
    );
    assert.equal(found[0]!.count, takeoff.tiles[0]!.boxes!.count);
  });

  it("is bags and tubes with their cost where the plan states them", () => {
    const found = purchases(planOf(...STOCK, wallText()));
    const [mortar, grout, sealant] = ["mortar", "grout", "sealant"].map((kind) =>
      found.find((each) => each.kind === kind),
    );
    // 39 3/4 x 23 3/4 in less the joints is under 40 sq ft.
    assert.deepEqual([mortar!.count, mortar!.unit, mortar!.cost], [1, "bag", 2400]);
    assert.deepEqual([grout!.count, grout!.unit, grout!.cost], [1, "bag", 3100]);
    assert.deepEqual([sealant!.count, sealant!.unit, sealant!.cost], [1, "tube", 900]);
    assert.match(grout!.amount, /^[\d.]+ cu in \([\d.]+ l\), [\d.]+ lb \([\d.]+ kg\)$/);
  });

  it("says what the plan leaves open, and invents nothing", () => {
    const found = purchases(planOf(wallText()));
    const why = new Map(found.map((each) => [each.kind, each.why]));
    assert.match(why.get("mortar")!, /doesn't say what a bag covers/);
    assert.match(why.get("grout")!, /doesn't say its density/);
    assert.match(why.get("sealant")!, /doesn't say what a tube holds/);
    assert.ok(found.every(({ cost }) => cost === null));
  });

  it("is a membrane where a wall stands over a tub or pan alone", () => {
    const kinds = (bottom: string) =>
      purchases(planOf(wallText({ bottom }))).map(({ kind }) => kind);
    assert.ok(kinds("tub").includes("membrane"));
    assert.ok(!kinds("floor").includes("membrane"));
  });

  it("is no membrane where tile is set, behind which it stands", () => {
    const kinds = (set?: string) =>
      purchases(planOf(wallText({ bottom: "pan", ...(set && { set }) }))).map(({ kind }) => kind);
    assert.ok(kinds().includes("membrane"));
    assert.ok(!kinds("courses 1 to 1").includes("membrane"));
  });

  it("says how much of the membrane are niches' sides, and asks for those without a depth", () => {
    const why = (...niches: string[]) => {
      const wall = wallText({ bottom: "pan" }).replace("  lay ", `${niches.join("")}  lay `);
      return purchases(planOf(wall)).find(({ kind }) => kind === "membrane")!.why;
    };
    const niche = (name: string, at: number, lines: string) =>
      `  niche ${name} {\n    at ${at}, 8\n    size 6 x 6\n    ${lines}\n  }\n`;
    // 4 sides of 6 x 3 in are 72 sq in, half a square foot.
    const deep = niche("soap", 6, "depth 3");
    const other = niche("shelf", 18, "");
    assert.match(why(), /; add a niche's sides, laps and upstands as its maker says$/);
    assert.match(why(other), /; add a niche's sides, laps/);
    assert.match(why(deep), /with 0\.50 sq ft .*of niches' sides; add laps and upstands/);
    assert.match(why(deep, other), /; add the sides of niches without a stated depth, laps and/);
  });

  it("is nothing where nothing is laid", () => {
    assert.deepEqual(purchases("units inch\n"), []);
  });
});
