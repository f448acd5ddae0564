import assert from "node:assert/strict";
import { addCells, addCutCells, cutWeight } from "../../../src/solver/choose/cell.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { CUTS } from "../../../src/solver/index.js";
import { planOf } from "../../language/telling.js";
import { randomFrom } from "../../support/random.js";
import { oneWall, randomGiven, type Variety } from "./model-plan.js";

const tally = () => ({ slivers: 0, underHalf: 0, cuts: 0, tiles: 0 });

/** How many tiles plain comparison told, each just as cutting does; of others no more was sure than cutting tells. */
function toldPlainly(variety: Variety): number {
  let plain = 0;
  for (let seed = 1; seed <= 150; seed++) {
    const random = randomFrom(seed);
    const { plan, wall, lay } = oneWall(randomGiven(random, variety));
    const field = fieldOf(plan, wall, lay, lay.joint.min);
    for (let n = 0; n < 20; n++) {
      const left = random.integer(-field.across.face, wall.size.across);
      const bottom = random.integer(-field.up.face, wall.size.up);
      const [told, cut] = [tally(), tally()];
      const sure = addCells(field, { left, bottom, many: 3 }, told);
      addCutCells(field, { left, bottom, many: 3 }, cut, { cells: 0 });
      const text = `seed ${seed}, left ${left}, bottom ${bottom}`;
      if (sure === null) assert.deepEqual(told, cut, text);
      else assert.ok(3 * sure.slivers <= cut.slivers && 3 * sure.cuts <= cut.cuts, text);
      if (sure === null && cut.tiles > 0) plain++;
    }
  }
  return plain;
}

describe("the pieces of one tile", () => {
  const variety = { measured: true, openings: 2, holes: true, corners: true, most: 5 };

  it("are told by plain comparison just as by cutting, and never less than is sure", () => {
    assert.ok(toldPlainly(variety) > 500);
  });

  it("are told so along the slopes of an outline, where a wedge is no sliver for sure", () => {
    assert.ok(toldPlainly({ ...variety, outlined: true }) > 500);
  });

  it("count a notch, a slot and a hole twice", () => {
    const weights = Object.fromEntries(CUTS.map((cut, i) => [cut, cutWeight(i)]));
    assert.deepEqual(weights, {
      none: 0,
      end: 1,
      rip: 1,
      corner: 1,
      notch: 2,
      slot: 2,
      scribe: 1,
      hole: 2,
    });
  });
});

describe("the pieces of one tile beside a riser", () => {
  it("are never sure to be a sliver as the wedge of a slope is", () => {
    const plan = planOf(`units mm
tile field {
  face 150 x 75
  thickness 8
}
wall back {
  outline 0, 0 to 900, 0 to 900, 900 to 500, 900 to 500, 500 to 0, 700
  lay field {
    bond stack
    joint 2
  }
}
`);
    const [wall] = plan.walls;
    const [lay] = wall!.lays;
    const field = fieldOf(plan, wall!, lay!, lay!.joint.min);
    const random = randomFrom(5);
    let parted = 0;
    for (let n = 0; n < 400; n++) {
      const left = random.integer(300_000_000, 560_000_000);
      const bottom = random.integer(400_000_000, 900_000_000);
      const [told, cut] = [tally(), tally()];
      const sure = addCells(field, { left, bottom, many: 1 }, told);
      addCutCells(field, { left, bottom, many: 1 }, cut, { cells: 0 });
      if (sure === null) assert.deepEqual(told, cut, `${left}, ${bottom}`);
      else assert.ok(sure.slivers <= cut.slivers && sure.cuts <= cut.cuts, `${left}, ${bottom}`);
      if (sure && cut.slivers === 0 && cut.tiles > 0) parted++;
    }
    assert.ok(parted > 20, `${parted}`);
  });
});
