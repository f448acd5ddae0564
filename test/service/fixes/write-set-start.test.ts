import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "plan/set-open";
const TITLE = /^Write down how these courses were set: /;

describe("courses that are set, of a start that is left open", () => {
  it("have it written down as it is chosen now, with the joint that was", () => {
    const plan = wallPlan("    joint 1/16 to 1/8\n    set courses 1 to 3 top 9\n");
    const { text, codes, fix } = mend(plan, CODE, TITLE);
    assert.match(text, /joint 1\/16 to 1\/8\n/);
    assert.match(text, /set courses 1 to 3 joint \S.* top 9\n/);
    assert.match(text, /\n {4}across \S.*\n {4}up \S.*\n {2}\}/);
    assert.ok(!codes.includes(CODE), codes.join());
    assert.equal(fix.preferred, true);
  });

  it("keep what is stated", () => {
    const plan = wallPlan("    joint 1/16\n    across tile centred at 7\n    set courses 1 to 3\n");
    const { text, codes } = mend(plan, CODE, TITLE);
    assert.match(text, /across tile centred at 7\n {4}set courses 1 to 3\n {4}up /);
    assert.ok(!codes.includes(CODE));
  });

  it("may stand in the wall", () => {
    const plan = wallPlan("    joint 1/16 to 1/8\n", "  size 60 x 47 3/16\n  set courses 1 to 3\n");
    const { text, codes } = mend(plan, CODE, TITLE);
    assert.match(text, / {2}set courses 1 to 3 joint \S/);
    assert.ok(!codes.includes(CODE), codes.join());
  });
});

describe("a finding of courses that are set", () => {
  it("can be allowed, and nothing else is offered for it", () => {
    const start =
      "    joint 1/32\n    across tile centred on wall\n    up full course from bottom\n";
    const titles = (plan: string) => mendsOf(plan, "joint/too-narrow").map(({ title }) => title);
    assert.ok(titles(wallPlan(start)).some((title) => title.startsWith("Widen")));
    const set = wallPlan(`${start}    set courses 1 to 400\n`);
    const [only, ...others] = titles(set);
    assert.match(only!, /^Allow/);
    assert.deepEqual(others, []);
  });
});
