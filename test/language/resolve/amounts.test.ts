import assert from "node:assert/strict";
import { planOf, told } from "../telling.js";

function toldIn(block: string, line: string): string[] {
  const needed = block.startsWith("tile") ? "face 2 x 1\n  thickness 1/4\n  " : "";
  return told(`${block} {\n  ${needed}${line}\n}\n`);
}

const tile = (line: string) =>
  planOf(`tile a {\n  face 2 x 1\n  thickness 1/4\n  ${line}\n}\n`).tiles[0]!;

describe("an amount's meaning", () => {
  const faults: readonly (readonly [line: string, message: string])[] = [
    ["tube 10", "[10] found a number without a unit, wanted floz, ml or l"],
    ["tube 10 oz", "[oz] found the unit `oz`, wanted floz, ml or l"],
    ["tube 10fl", "[fl] found the unit `fl`, wanted floz, ml or l"],
    ["tube 10 flozz", "[flozz] found the unit `flozz`, wanted floz, ml or l; did you mean `floz`?"],
    ["tube 0 ml", "[0 ml] found 0 ml, wanted more than zero"],
    ["tube -10.1floz", "[-10.1floz] found -10.1 floz, wanted more than zero"],
    ["tube 9999999 l", "[9999999 l] found more than anybody buys, wanted what one holds"],
  ];
  for (const [line, message] of faults) {
    it(`is told of ${line}`, () => {
      assert.deepEqual(toldIn("sealant", line), [`plan/amount ${message}`]);
      assert.equal(planOf(`sealant {\n  ${line}\n}\n`).sealant!.tube, null);
    });
  }

  it("of a density is grams in a cubic centimetre", () => {
    assert.equal(planOf("grout {\n  density 1.6\n}\n").grout!.density, 1_600);
    assert.equal(planOf("grout {\n  density 10\n}\n").grout!.density, 10_000);
    for (const density of ["1600", "0", "-1", "0.0004"]) {
      assert.deepEqual(toldIn("grout", `density ${density}`), [
        `plan/amount [${density}] found ${density}, wanted grams in a cubic centimetre, such as 1.6`,
      ]);
    }
  });

  it("of a bag of mortar needs both its figures", () => {
    const bag = (line: string) => planOf(`mortar {\n  bag ${line}\n}\n`).mortar!.bag;
    assert.deepEqual(bag("100 lb covers 100 sqft"), { mass: 45_359_237, covers: 9_290_304 });
    assert.equal(bag("100 lb covers 100"), null);
    assert.deepEqual(toldIn("mortar", "bag 50 covers 40"), [
      "plan/amount [50] found a number without a unit, wanted lb, oz, kg or g",
      "plan/amount [40] found a number without a unit, wanted sqft or m2",
    ]);
  });
});

describe("a price", () => {
  it("is whole hundredths of the plan's own money", () => {
    assert.deepEqual(tile("price 0.85 a piece").price, { hundredths: 85, per: "piece" });
    assert.equal(planOf("sealant {\n  price 0 a tube\n}\n").sealant!.price, 0);
  });

  it("has two decimals at most and isn't negative", () => {
    const wanted = "an amount with two decimals at most, such as 42.50";
    assert.deepEqual(toldIn("sealant", "price 9.999 a tube"), [
      `plan/price [9.999] found 9.999, wanted ${wanted}`,
    ]);
    assert.deepEqual(toldIn("sealant", "price 1/2 a tube"), [
      `plan/price [1/2] found 1/2, wanted ${wanted}`,
    ]);
    assert.deepEqual(toldIn("sealant", "price -9 a tube"), [
      "plan/price [-9] found -9, wanted zero or more",
    ]);
  });
});

describe("a breakage", () => {
  it("is a share of the pieces", () => {
    assert.deepEqual(tile("breakage 3%").breakage, { p: 3, q: 100 });
    assert.deepEqual(tile("breakage 2.5 %").breakage, { p: 1, q: 40 });
    assert.deepEqual(tile("breakage 0%").breakage, { p: 0, q: 1 });
    assert.deepEqual(tile("breakage 100%").breakage, { p: 1, q: 1 });
  });

  it("is from none to all of them", () => {
    for (const percent of ["101", "-3", "0.0001"]) {
      assert.deepEqual(toldIn("tile a", `breakage ${percent}%`), [
        `plan/breakage [${percent}] found ${percent}%, wanted from 0% to 100%, such as 3%`,
      ]);
      assert.equal(tile(`breakage ${percent}%`).breakage, null);
    }
  });
});

describe("spares", () => {
  it("are a whole number of pieces, none too", () => {
    assert.equal(tile("spares 2 * 3").spares, 6);
    assert.equal(tile("spares 0").spares, 0);
    for (const spares of ["-1", "1.5", "6in"]) {
      assert.deepEqual(toldIn("tile a", `spares ${spares}`), [
        `plan/spares [${spares}] found no number of pieces, wanted a whole number, such as 6`,
      ]);
    }
  });
});
