import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { criticalAcross, criticalUp, within } from "../../../src/solver/choose/origins.js";
import { inches, oneWall } from "./model-plan.js";

describe("critical starts", () => {
  const free = { meets: { kind: "free", trim: null } } as const;
  const { plan, wall, lay } = oneWall({
    face: [inches(6), inches(3)],
    size: [inches(60), inches(40)],
    sides: { left: free, right: free, bottom: free, top: free },
  });
  const field = fieldOf(plan, wall, lay, lay.joint.min);
  const { module } = field.across;

  it("bring the left tile to whole, to half and to the sliver limit", () => {
    const starts = criticalAcross(field);
    for (const seen of [6, 3, 2]) {
      assert.ok(starts.includes(within(inches(seen - 6), module, 0)), `${seen} in`);
    }
  });

  it("bring the right tile there too, and the two ends into balance", () => {
    const starts = criticalAcross(field);
    for (const left of [54, 57, 58, 27]) {
      assert.ok(starts.includes(within(inches(left), module, 0)), `left edge at ${left} in`);
    }
  });

  it("lie within one module, with the lowest course that may have a piece", () => {
    for (const y of criticalUp(field)) assert.ok(y > -inches(3) && y <= inches(1 / 16));
  });
});
