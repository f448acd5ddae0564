import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";

const MM = NM_PER.mm;

function laid(across: string, up: string, more = "") {
  const { laid } = firstWall(
    solveClean(`units mm
tile t { face 100 x 50
  thickness 8 }
wall w { size 1000 x 801
  left wall movement 3
  right wall movement 4
  bottom pan measured 0: 0, 1000: 10 movement 5
  top ceiling measured 0: 0, 1000: -7 movement 5
  ${more}
  lay t { bond stack
    joint 2
    across ${across}
    up ${up} } }`),
  );
  return laid;
}

/** How far a tile's left edge lies past a multiple of the module, from the wall's left; mm. */
const acrossOf = (start: string, more = "") =>
  (laid(start, "full course from bottom", more).lattice.x % (102 * MM)) / MM;
const upOf = (start: string, more = "") =>
  ((laid("full tile from left", start, more).lattice.y + 52 * MM) % (52 * MM)) / MM;

const WINDOW = `window s { at 300, 200
    size 200 x 300
    movement 2 }`;
const DOOR = `door d { at 0, 0
    size 500 x 400
    movement 0 }`;

describe("a start across", () => {
  it("puts a tile's or a joint's middle on the middle of the bare wall", () => {
    assert.equal(acrossOf("tile centred on wall"), 450 % 102);
    assert.equal(acrossOf("joint centred on wall"), 501 % 102);
  });

  it("centres on an opening's own middle, or on a place", () => {
    assert.equal(acrossOf("tile centred on s", WINDOW), 350 % 102);
    assert.equal(acrossOf("tile centred at 75"), 25);
  });

  it("begins with a whole tile at the region's left or right", () => {
    assert.equal(acrossOf("full tile from left"), 3);
    assert.equal(acrossOf("full tile from right"), 896 % 102);
  });
});

describe("a start up", () => {
  it("puts the bottom of a course at the region's lowest point", () => {
    // The pan is 5.03 mm up where the tile begins, 3 mm from the corner.
    assert.equal(upOf("full course from bottom"), 5.03);
  });

  it("puts the top of a course at the region's highest point", () => {
    // 801 - 5 - 7 x 3 / 1000 = 795.979
    const { courses } = laid("full tile from left", "full course from top");
    assert.ok(courses.some((course) => course.top === 795.979 * MM));
  });

  it("does not count what a door takes away as the lowest point", () => {
    assert.equal(upOf("full course from bottom", DOOR), 10);
  });

  it("puts a course's top under an opening, or its bottom over it", () => {
    assert.equal(upOf("full course under s", WINDOW), 148 % 52);
    assert.equal(upOf("full course over s", WINDOW), 502 % 52);
  });

  it("puts the middle of a bed joint at a height", () => {
    assert.equal(upOf("joint at 104"), 105 % 52);
  });
});
