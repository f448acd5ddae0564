import assert from "node:assert/strict";
import type { Plan } from "../../../src/model/index.js";
import { materialsToBuy } from "../../../src/sheets/purchases/materials-to-buy.js";
import type { Materials } from "../../../src/takeoff/index.js";
import { laid, wallText } from "../setting-out/plans.js";

const { plan: bare } = laid(wallText()).plan;
const { origin } = bare;

const PLAN: Plan = {
  ...bare,
  mortar: {
    title: "mortar",
    notch: null,
    bag: { mass: 1, covers: 1_000_000 },
    backButter: null,
    price: 2400,
    origin,
  },
  grout: { title: "grout", density: 1600, bag: { mass: 2_000_000 }, price: 3100, origin },
  sealant: { title: "sealant", tube: 300_000, depth: null, price: 900, origin },
};

const seal = (volume: number) => ({
  wall: "a",
  along: "left",
  length: 5,
  width: 1,
  depth: 1,
  volume,
});

/** Square metres, twice over in nm². */
const m2 = (tenths: bigint) => (2n * 10n ** 18n * tenths) / 10n;

const MATERIALS: Materials = {
  mortar: [
    { wall: "a", doubleArea: m2(15n), volume: 10, toCome: null, bags: null },
    { wall: "b", doubleArea: m2(15n), volume: 20, toCome: null, bags: null },
  ],
  grout: [
    { wall: "a", tile: "t", volume: 1_000_000, mass: null },
    { wall: "b", tile: "t", volume: 1_500_001, mass: null },
  ],
  sealant: [seal(200_000), seal(100_000)],
  membrane: [
    { wall: "a", doubleArea: m2(20n), doubleNicheSides: m2(2n), stands: false },
    { wall: "b", doubleArea: m2(10n), doubleNicheSides: m2(1n), stands: false },
  ],
};

describe("the materials to buy", () => {
  it("are rounded up once over all walls, not on each", () => {
    const { mortar, grout, sealant } = materialsToBuy(PLAN, MATERIALS);
    // 3 m² of bags that cover 1 m²: three, though each wall alone would take two.
    assert.deepEqual(mortar.bags, { count: 3, cost: 7200 });
    // 2,500,001 mm³ at 1.6 g/cm³ are 4,000,001.6 mg: over two bags of 2 kg.
    assert.equal(grout.mass, 4_000_002);
    assert.deepEqual(grout.bags, { count: 3, cost: 9300 });
    // Two beads that fill one tube exactly.
    assert.deepEqual(sealant.tubes, { count: 1, cost: 900 });
    assert.equal(sealant.length, 10);
  });

  it("are volumes and areas alone where the plan states nothing", () => {
    const { mortar, grout, sealant, membrane } = materialsToBuy(bare, MATERIALS);
    for (const { count, cost } of [mortar.bags, grout.bags, sealant.tubes]) {
      assert.deepEqual([count, cost], [null, null]);
    }
    assert.deepEqual([mortar.volume, grout.volume, grout.mass], [30, 2_500_001, null]);
    assert.deepEqual(membrane, { doubleArea: m2(30n), doubleNicheSides: m2(3n), toCome: null });
  });

  it("leave out the membrane of walls that have tile set, since it stands behind that", () => {
    const [a, b] = MATERIALS.membrane;
    const begun = { ...MATERIALS, membrane: [{ ...a!, stands: true }, b!] };
    assert.deepEqual(materialsToBuy(bare, begun).membrane, {
      doubleArea: m2(30n),
      doubleNicheSides: m2(3n),
      toCome: { doubleArea: m2(10n), doubleNicheSides: m2(1n) },
    });
  });
});
