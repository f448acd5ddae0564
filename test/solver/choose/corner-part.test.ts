import assert from "node:assert/strict";
import { cornerWithin } from "../../../src/solver/choose/corner-part.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { cutTile } from "../../../src/solver/cut-tile.js";
import { randomFrom } from "../../support/random.js";
import { inches, oneWall, SIXTEENTH, STEP } from "./model-plan.js";

describe("a corner between two measured sides", () => {
  it("leaves of a tile what cutting leaves, rounded the same but for a nanometre", () => {
    let told = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const random = randomFrom(seed);
      const readings = (length: number) =>
        [0, 0.02 + random.integer(0, 8) / 100, 0.95, 1].map((part) => ({
          at: Math.round(part * length),
          off: STEP * random.integer(-20, 20),
        }));
      const [width, height] = [inches(30), inches(40)];
      const { plan, wall, lay } = oneWall({
        face: [inches(3), inches(4)],
        size: [width, height],
        sides: {
          left: { measured: readings(height) },
          right: { measured: readings(height) },
          bottom: { measured: readings(width) },
          top: { measured: readings(width) },
        },
      });
      const field = fieldOf(plan, wall, lay, SIXTEENTH);
      const left = random.pick([-1, 28]) * inches(1) + random.integer(0, inches(0.6));
      const bottom = random.pick([-1, 37]) * inches(1) + random.integer(0, inches(0.6));
      const tile = { left, bottom, right: left + inches(3), top: bottom + inches(4) };
      const parts = cornerWithin(field, tile);
      if (!parts) continue;
      told++;
      const cut = cutTile(tile, field.region, { boxes: [], circles: [] });
      assert.deepEqual([parts.length, cut.length], [1, 1], `seed ${seed}`);
      for (const side of ["left", "bottom", "right", "top"] as const) {
        const apart = Math.abs(parts[0]!.bounds[side] - cut[0]!.bounds[side]);
        assert.ok(apart <= 1, `seed ${seed}: ${side} is ${apart} nm apart`);
      }
    }
    assert.ok(told > 200, `${told} corners`);
  });

  it("is not told where only one side cuts", () => {
    const { plan, wall, lay } = oneWall({
      face: [inches(3), inches(4)],
      size: [inches(30), inches(40)],
    });
    const field = fieldOf(plan, wall, lay, SIXTEENTH);
    const middle = { left: inches(10), bottom: inches(10), right: inches(13), top: inches(14) };
    assert.equal(cornerWithin(field, middle), null);
  });
});
