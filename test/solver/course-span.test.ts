import assert from "node:assert/strict";
import { CourseSpan } from "../../src/solver/course-span.js";
import { CUTS, type Lattice, type Region } from "../../src/solver/index.js";

const level = (value: number) => ({ at: [0], value: [value] });
const region: Region = {
  left: level(5),
  right: level(195),
  bottom: { at: [0, 200], value: [0, 10] },
  top: level(85),
  hiddenLeft: level(30),
  hiddenRight: null,
  hiddenBottom: null,
  hiddenTop: null,
  takeaways: [],
  roundHoles: [],
  steps: [],
  between: { left: -Infinity, right: Infinity },
  bounds: { left: 5, bottom: 0, right: 195, top: 85 },
};
const lattice: Lattice = { x: 0, y: 0, face: { across: 60, up: 30 }, joint: 2, p: 1, q: 2 };

describe("a course's span", () => {
  it("runs from the first tile past the left to the last before the right", () => {
    const first = new CourseSpan(region, lattice, 1);
    assert.deepEqual([first.first, first.last], [0, 3]);
    const second = new CourseSpan(region, lattice, 2);
    assert.deepEqual([second.origin, second.first, second.last], [31, -1, 2]);
  });

  it("has whole tiles between the sides, and none under what is hidden", () => {
    const { wholeFrom, wholeTo } = new CourseSpan(region, lattice, 1);
    assert.deepEqual([wholeFrom, wholeTo], [1, 2]);
  });

  it("is not level where the pan slopes through it, and level above", () => {
    assert.equal(new CourseSpan(region, lattice, 1).isLevel, false);
    assert.equal(new CourseSpan(region, lattice, 2).isLevel, true);
  });

  it("is ripped as a whole where the top cuts it level", () => {
    const top = new CourseSpan(region, lattice, 3);
    assert.deepEqual([top.rowBottom, top.rowTop, CUTS[top.rowCut]], [64, 85, "rip"]);
  });

  it("says what a plain tile's piece is where it ends square, and of no other course", () => {
    const tile = (left: number) => ({ left, bottom: 64, right: left + 60, top: 94 });
    const top = new CourseSpan(region, lattice, 3);
    assert.equal(top.isSquare, true);
    assert.deepEqual(top.rowWithin(tile(0)), { left: 5, bottom: 64, right: 60, top: 85 });
    assert.deepEqual(top.rowWithin(tile(186)), { left: 186, bottom: 64, right: 195, top: 85 });
    assert.equal(top.rowWithin(tile(-55)), null);
    const leaning = { ...region, left: { at: [0, 80], value: [5, 9] } };
    assert.equal(new CourseSpan(leaning, lattice, 3).isSquare, false);
    assert.equal(new CourseSpan(region, lattice, 1).isSquare, false);
  });
});
