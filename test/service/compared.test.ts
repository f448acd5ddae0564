import assert from "node:assert/strict";
import { Compared, isWhole } from "../../src/service/compared.js";
import { AFTER, BEFORE, oldPlan } from "./comparing.js";
import { stateOf } from "./state-of.js";

describe("what was compared", () => {
  it("is compared once for each pair", () => {
    const compared = new Compared();
    const now = stateOf(AFTER).outcome;
    const [old, other] = [oldPlan(BEFORE).outcome, oldPlan(AFTER).outcome];
    const first = compared.of(old, now);
    assert.equal(compared.of(old, now), first);
    assert.notEqual(compared.of(other, now), first);
  });
});

describe("a text", () => {
  it("is whole as long as all of it is understood, whatever is found in it", () => {
    assert.equal(isWhole(stateOf(BEFORE).outcome), true);
    assert.equal(isWhole(stateOf(BEFORE.replace("size 60", "size 60 1/2")).outcome), true);
    assert.equal(isWhole(stateOf(BEFORE.replace("size 60 x", "size 60")).outcome), false);
  });
});
