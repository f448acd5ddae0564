import {
  holdsMiddle,
  isInStep,
  slopeCuts,
  stepCuts,
} from "../../../src/language/resolve/outline.js";
import assert from "node:assert/strict";
import { INCH, planOf, told, wallText } from "../telling.js";

const shaped = (outline: string, more = "") =>
  wallText("").replace("  size 60 x 96\n", `  outline ${outline}\n${more}`);

describe("an outline", () => {
  it("is the wall's size where none is stated, its corners anticlockwise", () => {
    // Given clockwise, with a corner on a straight run.
    const [wall] = planOf(shaped("0, 0 to 0, 40 to 30, 80 to 60, 80 to 60, 0 to 30, 0")).walls;
    assert.deepEqual(wall!.size, { across: 60 * INCH, up: 80 * INCH });
    assert.deepEqual(
      wall!.outline!.map(({ x, y }) => [x / INCH, y / INCH]),
      [
        [60, 0],
        [60, 80],
        [30, 80],
        [0, 40],
        [0, 0],
      ],
    );
  });

  it("bends the side that it slopes, as readings would", () => {
    const [wall] = planOf(shaped("0, 0 to 60, 0 to 60, 80 to 30, 80 to 0, 40")).walls;
    const { top, left } = wall!.edges;
    assert.deepEqual(
      top.measured.map(({ at, off }) => [at / INCH, off / INCH]),
      [
        [0, -40],
        [30, 0],
        [60, 0],
      ],
    );
    assert.deepEqual([top.outlined, left.outlined], [true, false]);
  });

  it("may have a slope that ends at a step beyond it: a ceiling that falls to a beam", () => {
    const [wall] = planOf(shaped("0, 0 to 60, 0 to 60, 90 to 40, 90 to 40, 60 to 0, 80")).walls;
    assert.deepEqual(told(shaped("0, 0 to 60, 0 to 60, 90 to 40, 90 to 40, 60 to 0, 80")), []);
    const [riser, ...more] = wall!.risers;
    assert.deepEqual(
      [riser!.of, riser!.x / INCH, riser!.low / INCH, riser!.high / INCH, riser!.edge.side],
      ["top", 40, 60, 90, "left"],
    );
    assert.deepEqual([more, wall!.steps], [[], []]);
  });

  const faults: Record<string, string> = {
    "0, 0 to 60, 0": "[outline] found 2 corners, wanted an outline of 3 to 100",
    "3, 0 to 60, 0 to 60, 9": "[outline] found an outline from 3 in on, wanted its left end at 0",
    "0, 0 to 60, 0 to 0, 60 to 60, 60":
      "[0, 0] found an outline that crosses or touches itself, wanted it clear of itself",
    "0, 0 to 60, 0 to 30, 0":
      "[60, 0] found an outline that crosses or touches itself, wanted it clear of itself",
    "0, -9 to 60, -9 to 60, 0":
      "[outline] found an outline under the level line, wanted it to reach above",
  };
  for (const [outline, message] of Object.entries(faults)) {
    it(`is told at its place: ${outline}`, () => {
      assert.deepEqual(told(shaped(outline)), [`plan/outline ${message}`]);
    });
  }

  it("is told where it overhangs, at the corner where it does", () => {
    const notch = "0, 0 to 60, 0 to 60, 30 to 30, 30 to 30, 50 to 60, 50 to 60, 80 to 0, 80";
    const [message, ...more] = told(shaped(notch));
    assert.match(message!, /^plan\/outline \[30, 30\] found an overhang in the outline/);
    assert.deepEqual(more, []);
  });

  it("of ten thousand corners is told at once", () => {
    const corners = Array.from({ length: 10_000 }, (_, i) => `${i}, ${i % 7}`).join(" to ");
    assert.deepEqual(told(shaped(corners)), [
      "plan/outline [outline] found 10000 corners, wanted an outline of 3 to 100",
    ]);
  });

  it("is left out where the size is another", () => {
    const text = shaped("0, 0 to 60, 0 to 60, 90 to 0, 90", "  size 60 x 96\n");
    assert.deepEqual(told(text), [
      "plan/outline [size] found a size of 60 in x 96 in, wanted that of the outline, 60 in x 90 in, or none; the outline is left out",
    ]);
    assert.equal(planOf(text).walls[0]!.outline, null);
  });
});

describe("an outline and a rectangle on its wall", () => {
  const gable = [
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 90 },
    { x: 0, y: 30 },
  ];
  const box = (left: number, bottom: number) => ({
    left,
    bottom,
    right: left + 10,
    top: bottom + 10,
  });

  it("are told apart from a slope that only touches a corner of it", () => {
    assert.equal(slopeCuts(gable, box(20, 40)), false);
    assert.equal(slopeCuts(gable, box(20, 41)), true);
    assert.equal(slopeCuts(gable, box(20, 60)), false);
    assert.equal(slopeCuts(gable, box(-5, -5)), false, "a corner of level and upright edges");
  });

  it("say whether it lies in a step, or an edge of one runs through it", () => {
    const post = [
      { x: 0, y: 0 },
      { x: 90, y: 0 },
      { x: 90, y: 40 },
      { x: 60, y: 30 },
      { x: 60, y: 90 },
      { x: 30, y: 90 },
      { x: 30, y: 30 },
      { x: 0, y: 30 },
    ];
    assert.deepEqual([isInStep(post, box(20, 30)), stepCuts(post, box(20, 30))], [true, false]);
    assert.deepEqual([isInStep(post, box(21, 30)), stepCuts(post, box(21, 30))], [false, true]);
    assert.equal(isInStep(post, box(40, 50)), false, "on the wall");
    assert.equal(isInStep(post, box(70, 60)), false, "over a slope");
  });

  it("say whether its middle is on the wall", () => {
    assert.equal(holdsMiddle(gable, box(20, 30)), true);
    assert.equal(holdsMiddle(gable, box(20, 60)), false);
  });
});
