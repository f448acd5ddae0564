import assert from "node:assert/strict";
import { planOf, told } from "../telling.js";

describe("units", () => {
  it("are inches where a plan doesn't say", () => assert.equal(planOf("bed 1\n").units, "inch"));

  for (const unit of ["inch", "mm", "cm", "m", "foot"]) {
    it(`may be ${unit}`, () => assert.equal(planOf(`units ${unit}\n`).units, unit));
  }

  it("hold for the lines before them too", () => {
    assert.equal(planOf("bed 3\nunits mm\n").bed, 3_000_000);
  });

  it("that nobody knows are told, and inches taken", () => {
    assert.deepEqual(told("units inches\n"), [
      "plan/units [inches] found the unit `inches`, wanted inch, mm, cm, m or foot; did you mean `inch`?",
    ]);
    assert.equal(planOf("units cubits\n").units, "inch");
  });
});
