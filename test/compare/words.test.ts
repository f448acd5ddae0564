import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { counted, courseWords, Words } from "../../src/compare/words.js";

const INCH = NM_PER.inch;

describe("the words of a comparison", () => {
  const words = new Words("inch");

  it("say which way and how far", () => {
    assert.equal(words.shift({ across: 0, up: (3 / 8) * INCH }), "up 3/8 in");
    assert.equal(words.shift({ across: -2 * INCH, up: -INCH }), "left 2 in and down 1 in");
    assert.equal(words.shift({ across: 1, up: 0 }), "right a hair");
    assert.equal(new Words("mm").shift({ across: 9_500_000, up: 0 }), "right 9.5 mm");
  });

  it("say how courses step in another bond", () => {
    assert.equal(words.courses({ up: INCH, across: [0] }), "all courses move up 1 in");
    assert.equal(
      words.courses({ up: INCH, across: [-INCH, INCH] }),
      "all courses move up 1 in, and across by their place in the bond: left 1 in or right 1 in",
    );
  });

  it("say how far pieces moved, one by one or at most", () => {
    const by = (across: number, up: number) => ({ by: { across, up }, count: 3 });
    assert.equal(words.moved([by(0, INCH)]), "3 pieces only moved, up 1 in");
    assert.equal(
      words.moved([by(-2 * INCH, 0), by(INCH, INCH)]),
      "6 pieces only moved, by at most 2 in across and 1 in up or down",
    );
    assert.equal(words.moved([by(0, 0)]), "3 pieces only moved");
  });

  it("name courses as short as they can", () => {
    assert.equal(courseWords([3]), "in course 3");
    assert.equal(courseWords([4, 2, 3]), "in courses 2 to 4");
    assert.equal(courseWords([1, 5, 3]), "in every other course from 1 to 5");
    assert.equal(courseWords([1, 2]), "in courses 1 and 2");
    assert.equal(courseWords([1, 5, 6]), "in courses 1, 5 and 6");
    assert.equal(courseWords([1, 2, 4, 8, 16, 32, 64]), "in 7 courses from 1 to 64");
  });

  it("name parts that came, went and were renamed", () => {
    const part = (before: string | null, after: string | null) =>
      words.part({ kind: "niche", name: { before, after } });
    assert.equal(part(null, "shelf"), "niche shelf is new");
    assert.equal(part("shelf", null), "niche shelf is gone");
    assert.equal(part("shelf", "ledge"), "niche shelf is now called ledge");
  });

  it("count", () => {
    assert.deepEqual([counted(1, "piece"), counted(2, "piece")], ["1 piece", "2 pieces"]);
    assert.equal(counted(2, "box", "boxes"), "2 boxes");
  });
});
