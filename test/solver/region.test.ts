import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { buildOf, frameInner, frameOuter, solve } from "../../src/solver/index.js";
import { parse, resolve } from "../../src/language/index.js";
import { ALONE, firstWall, solveClean } from "../support/solve-text.js";

const MM = NM_PER.mm;
const TILES = `
units mm
bed 3
tile t { face 100 x 50
  thickness 8 }
trim n { face 100 x 20
  thickness 8 }
`;
const LAY = `lay t { bond stack
  joint 2
  across full tile from left
  up full course from bottom }`;

function region(wall: string, more = "") {
  const solved = solveClean(`${TILES}\nwall w { size 1000 x 800\n${wall}\n${LAY} }\n${more}`);
  return firstWall(solved).wall.region;
}

const mm = (box: object) =>
  Object.fromEntries(Object.entries(box).map(([side, nm]) => [side, (nm as number) / MM]));

describe("regionOf", () => {
  it("draws each side in by its joint", () => {
    const { bounds } = region(
      "left wall movement 3\nright wall movement 4\nbottom pan movement 5\ntop ceiling joint 6",
    );
    assert.deepEqual(mm(bounds), { left: 3, bottom: 5, right: 996, top: 794 });
  });

  it("takes an edge that is not stated for a wall with a 1/8 in movement joint", () => {
    assert.deepEqual(mm(region("").bounds), {
      left: 3.175,
      bottom: 3.175,
      right: 996.825,
      top: 796.825,
    });
  });

  it("bends a side to its readings", () => {
    const { bottom, bounds } = region("bottom pan measured 0: 0, 500: -4, 1000: 2 movement 3");
    assert.deepEqual(bottom, { at: [0, 500 * MM, 1000 * MM], value: [3 * MM, -1 * MM, 5 * MM] });
    assert.equal(bounds.bottom, -1 * MM);
  });

  it("leaves the tile under a corner to its own joint and hides what the other's build covers", () => {
    const other = `wall v { size 500 x 800\nright corner w over movement 2\n${LAY} }`;
    const { bounds, hiddenLeft } = region("left corner v under movement 2", other);
    assert.equal(bounds.left, 2 * MM);
    assert.deepEqual(hiddenLeft?.value, [11 * MM]);
  });

  it("draws the tile over a corner in by the other's build and the joint", () => {
    const other = `wall v { size 500 x 800\nright corner w under movement 2\n${LAY} }`;
    const { bounds, hiddenLeft } = region("left corner v over movement 2", other);
    assert.equal(bounds.left, 13 * MM);
    assert.equal(hiddenLeft, null);
  });

  it("draws a free side in by its trim and one joint, and by nothing without trim", () => {
    const { bounds } = region("left free trim n\nright free");
    assert.equal(bounds.left, 22 * MM);
    assert.equal(bounds.right, 1000 * MM);
  });

  it("takes an opening away with its movement joint, or its frame with the laid joint", () => {
    const { takeaways } = region(`
      window a { at 100, 100
        size 200 x 300
        movement 4 }
      window b { at 500, 100
        size 200 x 300
        frame n mitre
        inset 5
        movement 4 }`);
    assert.deepEqual(mm(takeaways[0]!.box), { left: 96, bottom: 96, right: 304, top: 404 });
    assert.deepEqual(mm(takeaways[1]!.box), { left: 483, bottom: 83, right: 717, top: 417 });
    assert.deepEqual(mm(frameOuter(takeaways[1]!.opening)!), {
      left: 485,
      bottom: 85,
      right: 715,
      top: 415,
    });
    assert.deepEqual(mm(frameInner(takeaways[1]!.opening)!), {
      left: 505,
      bottom: 105,
      right: 695,
      top: 395,
    });
    assert.equal(frameOuter(takeaways[0]!.opening), null);
  });

  it("takes a door down to the lowest of the floor", () => {
    const { takeaways } = region(`bottom floor measured 0: 0, 1000: -10 movement 3
      door d { at 300, 0
        size 400 x 600
        movement 5 }`);
    assert.equal(takeaways[0]!.box.bottom, -10 * MM);
  });
});

describe("buildOf", () => {
  it("is tile and bed, and nothing on a wall without tile", () => {
    const { plan } = solveClean(`${TILES}\nwall w { size 900 x 900\n${LAY} }`);
    assert.equal(buildOf(plan, "w"), 11 * MM);
    assert.equal(buildOf(plan, "nowhere"), 0);
  });

  it("takes what stands on the floor down to it, grown by its movement joint", () => {
    const { takeaways } = region(
      "bottom pan measured 0: 0, 1000: -10\nbench seat { at 0\n size 600 x 300\n movement 4 }",
    );
    assert.deepEqual(mm(takeaways[0]!.box), { left: -4, bottom: -10, right: 604, top: 304 });
  });

  it("takes what hangs from the ceiling up to it", () => {
    const { takeaways } = region(
      "top ceiling measured 0: 0, 1000: 10\nsoffit duct { at 500\n size 500 x 200\n movement 4 }",
    );
    assert.deepEqual(mm(takeaways[0]!.box), { left: 496, bottom: 596, right: 1004, top: 810 });
  });

  it("takes nothing but its own from what has a height, so that tile goes on under it", () => {
    const { takeaways } = region("bench seat { at 100, 400\n size 600 x 50 }");
    assert.deepEqual(mm(takeaways[0]!.box), { left: 100, bottom: 400, right: 700, top: 450 });
  });

  it("begins the courses on a bench: its top and the soft joint over it", () => {
    const { solved } = solveClean(
      `${TILES}\nwall w { size 1000 x 800\nbottom pan movement 3\nbench seat { at 0\n size 600 x 300\n movement 4 }\n` +
        `lay t { bond stack\n joint 2\n across full tile from left\n up full course over seat } }`,
    );
    // A course's bottom is at 304; below it five modules of 52 down to 44, and -8, cut by the joint at 3.
    const { courses } = solved.walls[0]!.lays[0]!;
    assert.ok(courses.some(({ bottom }) => bottom === 304 * MM));
    assert.equal(courses[0]!.bottom, -8 * MM);
  });

  it("runs on down a leg past the pan, where the main courses keep to the pan", () => {
    const { plan } = resolve(
      parse(
        `${TILES}\nwall w { size 1000 x 800\nleg left 150 down 90 floor movement 4\nbottom pan movement 5\nleft free\nright free\ntop free\n${LAY} }`,
      ),
      ALONE,
    );
    const [wall] = solve(plan).walls;
    // A course stands on the pan's joint, at 5. Below it one whole course, -47 to 3, and one cut: -99 to
    // -49, of which the foot's joint leaves -86 to -49. The leg is 150 wide less the pan's joint, 145.
    const [lay] = wall!.lays;
    assert.deepEqual(
      lay!.courses.slice(0, 3).map(({ bottom }) => bottom / MM),
      [-99, -47, 5],
    );
    const box = (i: number) => [...lay!.pieces.bounds.slice(4 * i, 4 * i + 4)].map((nm) => nm / MM);
    assert.deepEqual(box(0), [0, -86, 100, -49]);
    assert.deepEqual(box(1), [102, -86, 145, -49]);
  });
});
