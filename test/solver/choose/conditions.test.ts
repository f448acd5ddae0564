import assert from "node:assert/strict";
import {
  conditionsAcross,
  conditionsUp,
  offsFrom,
  offsTo,
} from "../../../src/solver/choose/conditions.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { inches, oneWall, window } from "./model-plan.js";

describe("critical conditions", () => {
  const openings = [window([inches(20), inches(10)], [inches(20), inches(10)])];
  const given = { face: [inches(6), inches(3)], size: [inches(60), inches(40)] } as const;
  const { plan, wall, lay } = oneWall({ ...given, openings });
  const field = fieldOf(plan, wall, lay, lay.joint.min);

  it("are where a tile's edge, half and sliver limit meet a place from which or to which it is seen", () => {
    assert.deepEqual(offsFrom(field.across), [0, 6, 3, 4].map(inches));
    assert.deepEqual(offsTo(field.across), [0, 6, 3, 2].map(inches));
  });

  it("are met by both sides, both jambs, and the balance of the ends", () => {
    const conditions = conditionsAcross(field);
    assert.equal(conditions.length, 4 * 4 + 1);
    assert.equal(conditions.filter((condition) => condition.halved).length, 1);
    assert.equal(conditionsUp(field).length, 4 * 4 + 1);
  });

  it("come in the same order for every joint, so that they can be followed", () => {
    const wider = fieldOf(plan, wall, lay, inches(1 / 8));
    assert.equal(conditionsAcross(wider).length, conditionsAcross(field).length);
  });
});
