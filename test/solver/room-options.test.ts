import assert from "node:assert/strict";
import { roomOptions, solve, wishOutcomes, worseIn } from "../../src/solver/index.js";
import { planOf } from "../language/telling.js";

/**
 * A wall of free sides, 30 in up from the line, of courses of 4 in without joints, over a window at 13 in:
 * whole at the bottom (0, 4, 8, 12 ...) misses the sill by 1, whole at the sill misses the bottom by 1.
 */
const plan = planOf(`prefer {
  whole courses at bottom
  whole courses at sill of sash
}
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size 40 x 30
  bottom free
  top free
  left free
  right free
  window sash {
    at 12, 13
    size 16 x 8
    movement 0
  }
  lay field {
    bond stack
    joint 0
    across full tile from left
  }
}
`);
const INCH = 25_400_000;

describe("a room whose wishes collide", () => {
  const solved = solve(plan);

  it("meets the first, and tells how far the second is missed and what it would cost", () => {
    const [bottom, sill] = wishOutcomes(solved);
    assert.deepEqual([bottom!.missed, bottom!.nearest], [0, null]);
    assert.equal(sill!.missed, INCH);
    assert.deepEqual(sill!.nearest!.misses, [INCH, 0]);
  });

  it("offers both ways, the plan's own first, and neither twice", () => {
    const options = roomOptions(solved);
    assert.deepEqual(
      options.map(({ had, misses }) => [had, misses]),
      [
        [true, [0, INCH]],
        [false, [INCH, 0]],
      ],
    );
    assert.deepEqual(worseIn(options[1]!, options[0]!).wishes, [0]);
  });

  it("is no room without wishes", () => {
    const alone = solve({ ...plan, wishes: [] });
    assert.equal(alone.room, undefined);
    assert.deepEqual(wishOutcomes(alone), []);
    assert.deepEqual(roomOptions(alone), []);
  });
});
