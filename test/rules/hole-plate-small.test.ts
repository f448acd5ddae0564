import assert from "node:assert/strict";
import { leastLap, twiceLap } from "../../src/rules/hole-plate-small.js";
import { solveClean } from "../support/solve-text.js";
import { findings, messages, wallText } from "./wall-text.js";

const CODE = "hole/plate-small";
const told = (plate: string, plan = ""): string[] =>
  messages({ plan, wall: `hole valve at 12, 6 across 4 plate ${plate}` }, CODE);

// A plate laps 1/4 in over its hole: common practice.
describe("hole/plate-small", () => {
  it("tells a lap of a nanometre under 1/4 in, and is silent at it", () => {
    assert.deepEqual(told("4 1/2"), []);
    assert.deepEqual(told("4 1/2 - nm"), [
      "the plate of valve laps 1/4- in over its hole; at least 1/4 in all round, so a plate of 4 1/2 in or more, is wanted",
    ]);
  });

  it("counts the narrower way of a plate with four sides", () => {
    assert.deepEqual(told("4 1/2 x 9"), []);
    assert.match(told("9 x 4 1/4")[0]!, /laps 1\/8 in over/);
  });

  it("tells a plate that is smaller than its hole as an error", () => {
    assert.match(told("4 - nm")[0]!, /^the plate of valve leaves its hole of 4 in bare by 0\+ in/);
    const of = (plate: string) =>
      findings({ wall: `hole valve at 12, 6 across 4 plate ${plate}` }, CODE)[0]!.severity;
    assert.deepEqual([of("4 - nm"), of("4")], ["error", "warning"]);
  });

  it("is silent of a hole without a plate", () => {
    assert.deepEqual(messages({ wall: "hole valve at 12, 6 across 4" }, CODE), []);
    const { plan } = solveClean(wallText({ wall: "hole valve at 12, 6 across 4" }));
    assert.equal(twiceLap(plan.walls[0]!.holes[0]!), Infinity);
  });

  it("follows the plan's own limit, and is silenced by off and by an allow", () => {
    assert.deepEqual(told("4 1/4", "rules {\n plate 1/8\n}"), []);
    assert.equal(told("4 1/4 - nm", "rules {\n plate 1/8\n}").length, 1);
    assert.deepEqual(told("4", "rules {\n plate off\n}"), []);
    const { solved } = solveClean(wallText({ plan: "rules {\n plate 10mm\n}" }));
    assert.equal(leastLap(solved), 10_000_000);
    const wall = `hole valve at 12, 6 across 4 plate 4\nallow ${CODE} "its gasket is wide"`;
    assert.equal(findings({ wall }, CODE)[0]!.allowed, "its gasket is wide");
  });
});
