import assert from "node:assert/strict";
import { setWords } from "../../src/model/index.js";

describe("the words that a finding ends with whose pieces are set", () => {
  it("say of one course that it is set, of several that they are", () => {
    assert.equal(setWords("course 3"), "; course 3 is set: it can no longer be mended");
    for (const several of ["courses 1 to 6", "course 1 and course 4"]) {
      assert.equal(setWords(several), `; ${several} are set: it can no longer be mended`);
    }
  });
});
