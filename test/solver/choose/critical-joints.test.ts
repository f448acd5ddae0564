import assert from "node:assert/strict";
import { criticalJoints } from "../../../src/solver/choose/critical-joints.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { inches, oneWall } from "./model-plan.js";

describe("critical joints", () => {
  const free = { meets: { kind: "free", trim: null } } as const;
  const { plan, wall, lay } = oneWall({
    face: [inches(6), inches(3)],
    // Twenty-six courses of 3 in and twenty-five joints fill 80 in at a joint of 0.08 in.
    size: [inches(60), inches(80)],
    joint: [inches(1 / 16), inches(1 / 8)],
    sides: { left: free, right: free, bottom: free, top: free },
  });
  const [least, most] = [lay.joint.min, lay.joint.max].map((j) => fieldOf(plan, wall, lay, j));

  it("are those at which whole courses fill the wall, among others, and the range's ends", () => {
    const { joints, isAll } = criticalJoints(least!, most!);
    assert.equal(isAll, true);
    assert.ok(joints.includes(inches(0.08)));
    assert.equal(joints[0], lay.joint.min);
    assert.equal(joints.at(-1), lay.joint.max);
  });

  it("are one where the joint is fixed", () => {
    assert.deepEqual(criticalJoints(least!, least!), { joints: [lay.joint.min], isAll: true });
  });
});
