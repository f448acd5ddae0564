import assert from "node:assert/strict";
import type { Mortar } from "../../../src/model/index.js";
import { mortarBags, mortarOf } from "../../../src/takeoff/materials/mortar.js";
import { planOf } from "../../language/telling.js";

const INCH = 25_400_000;
/** Twice a square foot in nm². */
const SQUARE_FOOT = 2n * BigInt(12 * INCH) ** 2n;
const AREAS = { tiles: 90n * SQUARE_FOOT, trims: 6n * SQUARE_FOOT, tileJoints: 3n * SQUARE_FOOT };
const TRIM_JOINTS = [{ doubleArea: SQUARE_FOOT, thickness: INCH }];

function mortar(lines: string): Mortar {
  return planOf(`mortar {\n${lines}\n}\n`).mortar!;
}

function taken(bed: number, stock: Mortar | null) {
  return mortarOf({ bed, mortar: stock }, "back", { ...AREAS, trimJoints: TRIM_JOINTS });
}

const CUBIC_INCH = 25.4 ** 3;

describe("mortar", () => {
  it("lies under tile, trim and their joints, as thick as the bed", () => {
    const { doubleArea, volume, bags } = taken(INCH / 8, null);
    assert.equal(doubleArea, 100n * SQUARE_FOOT);
    assert.equal(volume, Math.ceil(((100 * 144) / 8) * CUBIC_INCH));
    assert.equal(bags, null);
  });

  it("is spread on the backs of tile and trim too, where the plan says so", () => {
    const { volume } = taken(INCH / 8, mortar("back-butter 1/16"));
    assert.equal(volume, Math.ceil(((100 * 144) / 8 + (96 * 144) / 16) * CUBIC_INCH));
  });

  it("is half as thick as the notch is deep, where the plan states no bed (common practice)", () => {
    assert.equal(
      taken(0, mortar("notch 1/4 x 3/8")).volume,
      Math.ceil(100 * 144 * (3 / 16) * CUBIC_INCH),
    );
    assert.equal(taken(0, null).volume, 0);
  });

  it("comes in bags by the maker's figure, rounded up and never down", () => {
    const plan = { bed: INCH / 8, mortar: mortar("bag 50 lb covers 50 sqft") };
    assert.deepEqual(taken(plan.bed, plan.mortar).bags, { exact: 2, bought: 2 });
    // The last half of a square foot is half an mm² more than the bag's whole ones.
    assert.equal(mortarBags(plan, 100n * SQUARE_FOOT + SQUARE_FOOT)!.bought, 3);
    assert.equal(mortarBags(plan, 1n)!.bought, 1);
    assert.equal(mortarBags(plan, 0n)!.bought, 0);
  });

  it("takes as many more bags as the backs are buttered thick against the bed", () => {
    const stock = mortar("bag 50 lb covers 50 sqft\nback-butter 1/16");
    assert.deepEqual(taken(INCH / 8, stock).bags, { exact: 3, bought: 3 });
    // Without a bed or a notch nothing says how much that is.
    assert.deepEqual(taken(0, stock).bags, { exact: 2, bought: 2 });
  });
});
