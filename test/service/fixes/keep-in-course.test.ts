import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "edge/rake";

/** A wall whose bottom rises so much, and whose first course is ripped to less. */
const raked = (by: string): string =>
  wallPlan("    joint 1/16\n    across tile centred on wall\n    up joint at 1 1/2\n").replace(
    "bottom pan",
    `bottom pan measured 0: 0, 60: ${by}`,
  );

describe("a rake that passes out of its course", () => {
  it("is taken up in one, where that is high enough", () => {
    const { codes, text } = mend(raked("2 1/2"), CODE, /one course: up full course from bottom$/);
    assert.ok(!codes.includes(CODE));
    assert.ok(text.includes("up full course from bottom"));
  });

  it("is taken up at the top likewise", () => {
    const text = raked("0").replace("top ceiling", "top ceiling measured 0: 0, 60: -2 1/2");
    assert.ok(!mend(text, CODE, /up full course from top$/).codes.includes(CODE));
  });

  it("stays where no course is high enough", () => {
    const titles = mendsOf(raked("3"), CODE).map(({ title }) => title);
    assert.deepEqual(titles, ["Allow edge/rake here"]);
  });
});
