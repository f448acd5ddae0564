import assert from "node:assert/strict";
import { edited, Plans, wallPlan } from "./plans.js";

describe("hints", () => {
  it("show at the lay's heading what was left to the solver", () => {
    const plans = new Plans();
    const text = wallPlan("    joint 1/16\n    up full course from bottom\n");
    const [hint, ...others] = plans.service.hints(plans.open(text));
    assert.deepEqual(others, []);
    const line = text.split("\n").findIndex((each) => each.includes("lay pressed"));
    assert.deepEqual(hint!.at, { line, character: "  lay pressed {".length });
    assert.match(hint!.text, /^# chosen: (tile|joint|full tile) [a-z ]+$/);
  });

  it("name the joint of a range in the plan's units, and write down what they say", () => {
    const plans = new Plans();
    const text = wallPlan("    joint 1/16 to 1/8\n");
    const [hint] = plans.service.hints(plans.open(text));
    assert.match(hint!.text, /^# chosen: .+, .+, joint [\d/ .]+([+-]? in)?$/);
    assert.deepEqual(plans.service.hints(plans.open(edited(text, hint!.edits))), []);
  });

  it("are none where all is stated, and none outside the lines asked for", () => {
    const plans = new Plans();
    const stated =
      "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";
    assert.deepEqual(plans.service.hints(plans.open(wallPlan(stated))), []);
    const within = { start: { line: 0, character: 0 }, end: { line: 2, character: 0 } };
    const document = plans.open(wallPlan("    joint 1/16\n"));
    assert.deepEqual(plans.service.hints(document, within), []);
  });
});
