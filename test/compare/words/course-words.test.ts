import assert from "node:assert/strict";
import { courseWords, numberRuns } from "../../../src/compare/words/course-words.js";

describe("the words of courses", () => {
  it("name courses as short as they can", () => {
    assert.equal(courseWords([3]), "in course 3");
    assert.equal(courseWords([4, 2, 3]), "in courses 2 to 4");
    assert.equal(courseWords([1, 5, 3]), "in every other course from 1 to 5");
    assert.equal(courseWords([1, 2]), "in courses 1 and 2");
    assert.equal(courseWords([1, 5, 6]), "in courses 1, 5 and 6");
    assert.equal(courseWords([1, 2, 4, 8, 16, 32, 64]), "in 7 courses from 1 to 64");
  });

  it("name runs of numbers", () => {
    assert.equal(numberRuns([1, 2, 3, 5, 7, 8]), "1 to 3, 5, 7 to 8");
    assert.equal(numberRuns([]), "");
  });
});
