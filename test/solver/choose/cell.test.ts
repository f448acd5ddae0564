import assert from "node:assert/strict";
import { addCells, addCutCells, cutWeight } from "../../../src/solver/choose/cell.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { CUTS } from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { oneWall, randomGiven } from "./model-plan.js";

const tally = () => ({ slivers: 0, underHalf: 0, cuts: 0, tiles: 0 });

describe("the pieces of one tile", () => {
  it("are told by plain comparison just as by cutting, and never less than is sure", () => {
    const variety = { measured: true, openings: 2, holes: true, corners: true, most: 5 };
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
    assert.ok(plain > 500);
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
