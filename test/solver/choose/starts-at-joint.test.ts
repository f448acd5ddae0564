import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { compareBounds } from "../../../src/solver/choose/pairs-in-order.js";
import { looksAt, lowest, startsAtJoint } from "../../../src/solver/choose/starts-at-joint.js";
import { inches, oneWall, SIXTEENTH, window } from "./model-plan.js";

describe("the starts at one joint", () => {
  const given = { face: [inches(6), inches(3)], size: [inches(59), inches(47)] } as const;
  const startsOf = (over: object) => {
    const { plan, wall, lay } = oneWall({ ...given, ...over });
    return startsAtJoint(fieldOf(plan, wall, lay, SIXTEENTH));
  };

  it("come best bound first", () => {
    const { across, up } = startsOf({});
    for (const halves of [across, up]) {
      assert.ok(halves.length > 4);
      halves.forEach((half, i) => {
        assert.ok(i === 0 || compareBounds(halves[i - 1]!.bound, half.bound) <= 0);
      });
    }
  });

  it("are the stated one alone where a plan states it", () => {
    const { across, up } = startsOf({ across: { kind: "tile", centre: { on: "wall" } } });
    assert.equal(across.length, 1);
    assert.ok(up.length > 1);
  });

  it("cost at least what the best across and the best up do together", () => {
    const starts = startsOf({});
    const { slivers, imbalance } = lowest(starts);
    assert.equal(slivers, starts.across[0]!.bound.slivers + starts.up[0]!.bound.slivers);
    assert.equal(imbalance, starts.across[0]!.bound.imbalance + starts.up[0]!.bound.imbalance);
  });

  it("take more looks with openings", () => {
    const openings = [window([inches(20), inches(20)], [inches(10), inches(10)])];
    assert.ok(looksAt(startsOf({ openings })) > looksAt(startsOf({})));
  });
});
