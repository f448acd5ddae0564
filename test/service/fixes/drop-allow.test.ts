import assert from "node:assert/strict";
import { mend } from "./mending.js";
import { wallPlan } from "../plans.js";

const START = "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";

describe("an allow that silences nothing", () => {
  it("is taken away with its line", () => {
    const plan = wallPlan(START);
    const text = plan.replace("    joint", '    allow hole/near-edge "none here"\n    joint');
    const mended = mend(text, "allow/unused", /away/);
    assert.equal(mended.text, plan);
  });

  it("leaves a comment that stands beside it", () => {
    const text = wallPlan(`${START}    allow hole/near-edge "none" # keep me\n`);
    assert.ok(mend(text, "allow/unused", /away/).text.includes("# keep me"));
  });

  it("that names no rule is taken away, too", () => {
    const text = wallPlan(`${START}    allow hole/wide "what is it"\n`);
    const mended = mend(text, "allow/unknown", /away/);
    assert.equal(mended.text, wallPlan(START));
  });
});
