import assert from "node:assert/strict";
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

  it("are none where every side is straight", () => {
    const level = oneWall(given);
    const flat = fieldOf(level.plan, level.wall, level.lay, level.lay.joint.min);
    assert.equal(hasSlopes(flat), false);
    assert.equal(hasSlopes(field), true);
    assert.deepEqual(criticalUpAt(flat, 0), []);
    assert.deepEqual(criticalAcrossAt(flat, 0), []);
  });
});
