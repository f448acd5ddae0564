import assert from "node:assert/strict";
import { setText } from "./set-text.js";
import { messages } from "./wall-text.js";

const CODE = "set/no-course";

describe("set/no-course", () => {
  it("tells courses that there are not, and is silent where all are set", () => {
    assert.deepEqual(messages(setText("set courses 1 to 8"), CODE), []);
    assert.deepEqual(messages(setText("set courses 1 to 9"), CODE), [
      "courses 1 to 9 are said to be set, and the last course is course 8; wanted courses that are on the wall",
    ]);
  });
});
