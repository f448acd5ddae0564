import assert from "node:assert/strict";
import { valueAt } from "../../../src/solver/chain.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { within } from "../../../src/solver/choose/origins.js";
import {
  criticalAcrossAt,
  criticalUpAt,
  hasSlopes,
} from "../../../src/solver/choose/sloped-origins.js";
import { inches, oneWall } from "./model-plan.js";

describe("critical starts along a slope", () => {
  const given = { face: [inches(6), inches(3)], size: [inches(60), inches(40)] } as const;
  const measured = [
    { at: 0, off: 0 },
    { at: inches(60), off: inches(1) },
  ];
  const { plan, wall, lay } = oneWall({ ...given, sides: { bottom: { measured } } });
  const field = fieldOf(plan, wall, lay, lay.joint.min);
  const { module } = field.up;

  it("differ from column to column", () => {
    // A tile from 12 to 18 in stands highest at 18 in: 3/10 in, and the joint of 1/8 in.
    const high = inches(18 / 60 + 1 / 8);
    const starts = criticalUpAt(field, inches(12)).map((y) => within(y, module, 0));
    assert.ok(starts.includes(within(high, module, 0)));
    assert.ok(starts.includes(within(high - inches(3) + inches(1.5), module, 0)));
  });

  it("bring a tile's edge to where the slope crosses a critical line", () => {
    // A course's bottom at 1/2 in crosses the slope at (1/2 - 1/8) x 60 = 22 1/2 in.
    const starts = criticalAcrossAt(field, inches(0.5));
    assert.ok(starts.includes(within(inches(22.5), field.across.module, field.across.low)));
  });

  it("are where a piece that an outline's slope cuts is as high, or as wide, as a limit", () => {
    const bottom = { measured, outlined: true };
    const outlined = oneWall({ ...given, sides: { bottom } });
    const sloped = fieldOf(outlined.plan, outlined.wall, outlined.lay, outlined.lay.joint.min);
    const { chain } = sloped.sides.bottom;
    // A tile from 12 to 18 in stands lowest at 12 in; half of it is 1 1/2 in.
    const low = valueAt(chain, inches(12));
    const ups = criticalUpAt(sloped, inches(12)).map((y) => within(y, module, 0));
    assert.ok(ups.includes(within(low - inches(1.5), module, 0)));
    // A wedge of it that is 3 in wide has its point at 15 in, at the tile's top.
    assert.ok(ups.includes(within(valueAt(chain, inches(15)) - inches(3), module, 0)));
    // A course whose top is as high as the slope is at 30 in has such a wedge of a tile that begins 3 in before.
    const acrossAt = criticalAcrossAt(sloped, valueAt(chain, inches(30)) - inches(3));
    const { across } = sloped;
    const near = within(inches(27), across.module, across.low);
    assert.ok(acrossAt.some((x) => Math.abs(x - near) < 100));
  });

  it("are none where every side is straight", () => {
    const level = oneWall(given);
    const flat = fieldOf(level.plan, level.wall, level.lay, level.lay.joint.min);
    assert.equal(hasSlopes(flat), false);
    assert.equal(hasSlopes(field), true);
    assert.deepEqual(criticalUpAt(flat, 0), []);
    assert.deepEqual(criticalAcrossAt(flat, 0), []);
  });
});
