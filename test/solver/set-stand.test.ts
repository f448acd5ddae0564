import assert from "node:assert/strict";
import type { Lay, SetCourses } from "../../src/model/index.js";
import { isSetCourse, solve } from "../../src/solver/index.js";
import { drawnTop, isSet, setLattice, setStand } from "../../src/solver/set-stand.js";
import { regionOf } from "../../src/solver/region.js";
import { area, layOf, past, wallOf } from "./several-lays.js";

/**
 * Tile of 100 x 50 with joints of 2 on a region from 3 to 797: course n stands from 3 + 52 (n - 1), the top of
 * course 4 is planned at 209.
 */
const setLay = (from: number, to: number, ...tops: number[]): Lay => ({
  ...layOf("low", { area: area({}, { courses: to, rest: true }) }),
  set: {
    from,
    to,
    tops: tops.map((y) => ({ at: 0, y })),
    origin: layOf("low").origin,
  } satisfies SetCourses,
});
const rest: Lay = {
  ...layOf("high", { area: area({ bottom: past("low") }, { rest: true }) }),
  goesOnFrom: "low",
};

function standOf(lay: Lay) {
  const { plan, wall } = wallOf([lay]);
  assert.ok(isSet(lay));
  const ground = { wall, region: regionOf(plan, wall, 2), lay, joint: 2 };
  const stand = setStand(ground);
  return { ...stand, drawn: drawnTop(ground, stand), lattice: setLattice(ground, stand, 7) };
}

const figures = (lay: Lay) => {
  const { planned, top, reached, from, bed, drawn } = standOf(lay);
  return { planned, top, reached, from, bed, drawn };
};

describe("where set courses stand", () => {
  it("is where the plan has them, if no top was measured", () => {
    const planned = { planned: 209, top: 209, reached: true, from: 3, bed: 2, drawn: 209 };
    assert.deepEqual(figures(setLay(1, 4)), planned);
    assert.deepEqual(figures(setLay(1, 4, 209)), planned);
    assert.deepEqual(figures(setLay(3, 4)), { ...planned, from: 107 });
  });

  it("shares out what the highest top is off, rounded down once for all bed joints", () => {
    // 8 more over three joints: 2 + 2 each, and 2 left.
    const high = figures(setLay(1, 4, 205, 217, 210));
    assert.deepEqual(high, { planned: 209, top: 217, reached: true, from: 3, bed: 4, drawn: 215 });
    // 5 less over three: 2 - 2 each, and 1 left.
    const low = figures(setLay(1, 4, 204));
    assert.deepEqual(low, { planned: 209, top: 204, reached: true, from: 3, bed: 0, drawn: 203 });
  });

  it("takes a single course's from the joint over it", () => {
    const one = { planned: 53, reached: true, from: 3, bed: 2, drawn: 53 };
    assert.deepEqual(figures(setLay(1, 1, 60)), { ...one, top: 60 });
    assert.deepEqual(figures(setLay(1, 1, 51)), { ...one, top: 51 });
    assert.deepEqual(figures(setLay(1, 1, 50)), { ...one, top: 53, reached: false });
  });

  it("leaves out a top under closed joints, or a course away", () => {
    const planned = { planned: 209, top: 209, from: 3, bed: 2, drawn: 209 };
    assert.deepEqual(figures(setLay(1, 4, 202)), { ...planned, reached: false });
    assert.deepEqual(figures(setLay(1, 4, 209 + 52)), { ...planned, reached: false });
    assert.equal(figures(setLay(1, 4, 209 + 51)).reached, true);
  });

  it("has a lattice with those bed joints, from its first set course", () => {
    const { lattice } = standOf(setLay(1, 4, 217));
    assert.deepEqual([lattice.x, lattice.y, lattice.joint, lattice.bed], [7, 3, 2, 4]);
  });

  it("leaves what is over them to begin a joint past the measured top", () => {
    const { plan } = wallOf([setLay(1, 4, 217), rest]);
    const [wall] = solve(plan).walls;
    const [low, high] = wall!.lays;
    assert.deepEqual(
      low!.courses.map(({ bottom }) => bottom),
      [3, 57, 111, 165],
    );
    assert.deepEqual([high!.courses[0]!.bottom, high!.below], [219, 4]);
  });

  it("is of those courses alone that are set", () => {
    const lay = setLay(2, 4);
    assert.deepEqual(
      [0, 1, 2, 4, 5].map((course) => isSetCourse({ lay }, course)),
      [false, false, true, true, false],
    );
    assert.equal(isSetCourse({ lay: rest }, 1), false);
  });
});
