import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend } from "./mending.js";

const CODE = "set/no-course";

/** A wall of ten courses. */
const plan = (...set: string[]) => wallText({ size: "60 x 31 1/8", lay: set.join("\n") });

describe("more courses that are said to be set than there are", () => {
  it("end with the last one that there is", () => {
    const mended = mend(plan("set courses 1 to 12"), CODE, /courses 1 to 10 are set/);
    assert.ok(mended.text.includes("set courses 1 to 10\n"));
    assert.ok(!mended.codes.includes(CODE));
  });

  it("are counted through what is set before them", () => {
    const text = plan("set courses 1 to 4", "set courses 5 to 40");
    const mended = mend(text, CODE, /courses 5 to 10 are set/);
    assert.ok(mended.text.includes("set courses 5 to 10\n"));
    assert.ok(!mended.codes.includes(CODE));
  });
});
