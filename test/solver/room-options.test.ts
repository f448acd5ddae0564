import assert from "node:assert/strict";
import { measureRoom, roomOptions, solve, wishOutcomes, worseIn } from "../../src/solver/index.js";
import { solveTogether } from "../../src/solver/solve-together.js";
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

/** Rooms of two walls, each with a window of its own, of which not all wishes can be met. */
const PRICED = [11, 12.5, 14].flatMap((sill) =>
  [38.5, 41].map((across) =>
    planOf(`prefer {
  courses meet
  whole courses at bottom
  centre on sash
  whole courses at sill of sash
  equal ends
  no cut under 1
}
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size ${across} x 30
  bottom free
  top wall movement 1/8
  left free
  right corner side under movement 1/8
  window sash {
    at 12, ${sill}
    size 16 x 8
    movement 1/16
  }
  lay field {
    bond running 1/2
    joint 1/16
  }
}
wall side {
  size 21 x 30
  bottom free
  top wall movement 1/8
  left corner back over movement 1/8
  right free
  lay field {
    bond running 1/2
    joint 1/16
    up full course from top
  }
}
`),
  ),
);

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

  it("is priced as if it were searched for anew, wish by wish", () => {
    // None is capped, so that both searches come to the best there is.
    let told = 0;
    for (const each of [...PRICED, plan].map((asked) => solve(asked))) {
      const { asked } = each.room!;
      for (const { wish, missed, nearest } of wishOutcomes(each)) {
        const first = [wish, ...asked.wishes.filter((other) => other !== wish)];
        const anew = solveTogether(asked, first);
        assert.equal(anew.room!.capped, false);
        const { misses, score } = measureRoom(anew.plan, anew.walls, asked.wishes);
        if (misses[asked.wishes.indexOf(wish)] === missed) assert.equal(nearest, null);
        else assert.deepEqual([nearest!.misses, nearest!.score], [misses, score]);
        told += nearest ? 1 : 0;
      }
    }
    assert.ok(told >= 5, `${told}`);
  });

  it("is no room without wishes", () => {
    const alone = solve({ ...plan, wishes: [] });
    assert.equal(alone.room, undefined);
    assert.deepEqual(wishOutcomes(alone), []);
    assert.deepEqual(roomOptions(alone), []);
  });
});
