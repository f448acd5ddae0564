import assert from "node:assert/strict";
import {
  bareSides,
  movedOut,
  outlineOf,
  ringBetween,
  runsOf,
} from "../../../src/drawing/scene/sides.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const IN = 25_400_000;
const wallOf = (inside: string) => solvedWallOf(planOf(wallText(inside))).solved.wall;
const sidesOf = (inside: string) => bareSides(wallOf(inside));

describe("the sides of a wall", () => {
  it("enclose a rectangle where nothing was measured", () => {
    const ring = outlineOf(runsOf(sidesOf("")));
    assert.deepEqual(ring, [0, 0, 40 * IN, 0, 40 * IN, 30 * IN, 0, 30 * IN]);
  });

  it("meet where a leaning side meets a sloping one", () => {
    // The left side leans 1 in to the right over 30 in; the floor rises 2 in over 40 in.
    const { bottom } = runsOf(
      sidesOf(
        "  left wall measured 0: 0, 30: 1 movement 1/8\n  bottom floor measured 0: 0, 40: 2 movement 1/8",
      ),
    );
    // x = y / 30 and y = x / 20 meet at the origin.
    assert.deepEqual(bottom.slice(0, 2), [0, 0]);
    const { top } = runsOf(
      sidesOf(
        "  left wall measured 0: 0, 30: 1 movement 1/8\n  top ceiling measured 0: 0, 40: 2 movement 1/8",
      ),
    );
    // x = y / 30 and y = 30 in + x / 20: y = 30 in / (1 - 1 / 600), beyond the last reading: x stays 1 in.
    assert.deepEqual(top.slice(0, 2), [IN, 30 * IN + IN / 20]);
  });

  it("keep the corners of their readings between", () => {
    const { bottom } = runsOf(sidesOf("  bottom pan measured 10: 1, 20: -1 movement 1/8"));
    assert.deepEqual(bottom, [0, IN, 10 * IN, IN, 20 * IN, -IN, 40 * IN, -IN]);
  });

  it("move outwards each by its own width, with a band between", () => {
    const sides = sidesOf("");
    const widths = { left: 1, right: 2, bottom: 3, top: 4 };
    const outer = runsOf(movedOut(wallOf(""), sides, widths));
    assert.deepEqual(outlineOf(outer), [
      -1,
      -3,
      40 * IN + 2,
      -3,
      40 * IN + 2,
      30 * IN + 4,
      -1,
      30 * IN + 4,
    ]);
    assert.deepEqual(ringBetween([0, 0, 5, 0], [0, 2, 5, 2]), [0, 0, 5, 0, 5, 2, 0, 2]);
  });
});
