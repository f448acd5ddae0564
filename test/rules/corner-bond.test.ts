import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { cornerCourses, offWay, worstOff } from "../../src/rules/corner-bond.js";
import { cornersOf, cornerText, type CornerText } from "./corner-text.js";

const inches = (nm: number): number => nm / NM_PER.inch;
const coursesOf = (parts: CornerText) => cornerCourses(cornersOf(cornerText(parts))[0]!);

describe("a bond round a corner", () => {
  it("is wrapped as in the worked example: an end of 2 9/16, then 3 7/16 or 3 5/16 in", () => {
    // 3 x 6 on 60 in, centred on a tile, 1/8 in at each end: the end is 2 9/16 in; the next wall
    // starts with 3 7/16 in if the joint is added, 3 5/16 if it is swallowed (derived).
    const [course] = coursesOf({});
    assert.equal(inches(course!.end.shown), 2 + 9 / 16);
    assert.deepEqual(
      Object.entries(course!.wanted).map(([way, nm]) => [way, inches(nm)]),
      [
        ["added", 3 + 7 / 16],
        ["offcut", 3 + 7 / 16],
        ["swallowed", 3 + 5 / 16],
        ["mirrored", 2 + 9 / 16],
      ],
    );
  });

  it("goes on with the offcut where the other wall's tile covers a strip of the end", () => {
    const [course] = coursesOf({ bed: "1/8", thickness: "5/16" });
    assert.equal(inches(course!.end.shown), 2.25);
    assert.equal(inches(course!.wanted.added), 3.75);
    assert.equal(inches(course!.wanted.offcut), 3 + 7 / 16);
  });

  it("begins with a whole tile behind a whole one, less what the corner's joint has over a joint", () => {
    const [course] = coursesOf({ across: "full tile from right" });
    assert.equal(inches(course!.wanted.added), 6);
    assert.equal(inches(course!.wanted.swallowed), 6 - 1 / 16);
  });

  it("is looked at in each course that both walls have, by its own number", () => {
    const courses = coursesOf({ size: "60 x 24", bond: "running 1/2" });
    assert.deepEqual(
      courses.map(({ number }) => number),
      [1, 2, 3, 4, 5, 6, 7, 8],
    );
    const shown = courses.map(({ end }) => inches(end.shown));
    assert.deepEqual(shown.slice(0, 2), [2 + 9 / 16, 5 + 19 / 32]);
  });

  it("is told by its worst course", () => {
    const side = { across: "tile centred at 1/4 + 3 7/16 - 3" };
    const courses = coursesOf({ side });
    assert.equal(worstOff(courses, "added"), 0);
    assert.equal(inches(offWay(courses[0]!, "mirrored")), 7 / 8);
    assert.equal(inches(worstOff(courses, "swallowed")), 1 / 8);
  });

  it("is none where tile, joint or height differ", () => {
    assert.deepEqual(coursesOf({ side: { tile: "tall" } }), []);
    assert.deepEqual(coursesOf({ side: { joint: "1/8" } }), []);
    assert.deepEqual(coursesOf({ side: { up: "joint at 1" } }), []);
  });
});
