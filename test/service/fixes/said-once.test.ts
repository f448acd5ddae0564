import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "movement/no-joint";
const START = "    joint 1/8\n    across tile centred on wall\n    up full course from bottom\n";

describe("a soft joint that is stated twice", () => {
  it("is stated once", () => {
    const at = (place: string) => `    movement joint at ${place}\n`;
    const mended = mend(wallPlan(START + at("27") + at("28")), CODE, /Take this line away/);
    assert.equal(mended.text, wallPlan(START + at("27")));
    assert.ok(!mended.codes.includes(CODE));
  });

  it("is left alone where there is no such joint at all", () => {
    const none = wallPlan(`${START}    movement joint over course 99\n`);
    assert.deepEqual(
      mendsOf(none, CODE).map(({ title }) => title),
      ["Allow movement/no-joint here"],
    );
  });
});
