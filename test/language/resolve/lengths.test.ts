import assert from "node:assert/strict";
import { planOf, told, wallText } from "../telling.js";

describe("a length", () => {
  it("of nothing or less is told where it must be more", () => {
    assert.deepEqual(told("tile a {\n  face 0 x -3\n  thickness 1\n}\n"), [
      "plan/size [0] found 0 in, wanted more than zero",
      "plan/size [-3] found -3 in, wanted more than zero",
    ]);
  });

  it("of nothing is fine where it may be nothing, and less is told", () => {
    assert.deepEqual(told("bed 0\n"), []);
    assert.deepEqual(told("bed -1mm\n"), ["plan/size [-1mm] found -1/32+ in, wanted zero or more"]);
  });

  it("under zero is fine where a place may be", () => {
    assert.deepEqual(
      told(wallText("  lay field {\n    bond stack\n    joint 0\n    up joint at -4\n  }")),
      [],
    );
  });

  it("of up to 10 km is taken, and past it told", () => {
    assert.equal(planOf("bed 10000m\n").bed, 10 ** 13);
    assert.deepEqual(told("bed 2 * 5001m\n"), [
      "plan/too-long [2 * 5001m] found a length over 10 km, wanted one of a wall",
    ]);
  });

  it("is shown in the plan's own units", () => {
    assert.deepEqual(told("units mm\nbed -3\n"), [
      "plan/size [-3] found -3 mm, wanted zero or more",
    ]);
    assert.deepEqual(told("units foot\nbed -3\n"), [
      "plan/size [-3] found -3', wanted zero or more",
    ]);
  });
});
