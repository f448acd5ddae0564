import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import type { Lay } from "../../src/model/index.js";
import { courseTop } from "../../src/solver/course-top.js";
import { regionOf } from "../../src/solver/region.js";
import { layOf, wallOf, type Several } from "./several-lays.js";

/** Courses of 50 and joints of 2, in a region from 3 to 797. */
function topOf(number: number, up: Lay["up"], sides: Several["sides"] = {}): Nm {
  const lay = layOf("field", { up });
  const { plan, wall } = wallOf([lay], { sides });
  return courseTop({ wall, region: regionOf(plan, wall, 2), lay, joint: 2 }, number);
}

describe("the top of a lay's course", () => {
  it("counts from the full course at the bottom", () => {
    const up = { kind: "full-course", from: "bottom" } as const;
    assert.equal(topOf(1, up), 53);
    assert.equal(topOf(4, up), 3 + 4 * 52 - 2);
  });

  it("counts from a full course too where the plan leaves the courses open", () => {
    assert.equal(topOf(1, null), 53);
    assert.equal(topOf(2, null), 105);
  });

  it("counts a course that the bottom cuts", () => {
    // A joint at 20 is from 19 to 21: the course under it is left from 3 to 19.
    assert.equal(topOf(1, { kind: "joint", y: 20 }), 19);
    assert.equal(topOf(2, { kind: "joint", y: 20 }), 71);
  });

  it("doesn't count one that ends where the region begins", () => {
    // A joint at 4 is from 3 to 5, and the region begins at 3.
    assert.equal(topOf(1, { kind: "joint", y: 4 }), 55);
    assert.equal(topOf(1, { kind: "joint", y: 5 }), 4);
  });

  it("counts from the bottom where the full course is at the top", () => {
    // Full from 747 to 797; fourteen courses lower from 19 to 69, and under it one up to 17.
    const up = { kind: "full-course", from: "top" } as const;
    assert.equal(topOf(1, up), 17);
    assert.equal(topOf(2, up), 69);
  });

  it("counts from the lowest point of a bottom that is out of level", () => {
    const measured = [
      { at: 0, off: 0 },
      { at: 1000, off: -5 },
    ];
    // At the region's right end, 997: -5 * 997 / 1000 = -4.985, so 3 - 5 = -2 and 50 on it.
    assert.equal(topOf(1, null, { bottom: { measured } }), 48);
  });
});
