import assert from "node:assert/strict";
import type { Run } from "../../../src/language/resolve/lay-courses.js";
import type { SetStretch } from "../../../src/language/resolve/set-courses.js";
import { partsOf } from "../../../src/language/resolve/set-parts.js";
import { layOf } from "../../solver/several-lays.js";

const { tile, origin } = layOf("field");
const run = (courses: number | null): Run => ({ tile, courses });
const set = (from: number, to: number): SetStretch => ({
  from,
  to,
  joint: null,
  tops: [{ at: null, y: 100 * to }],
  origin,
});

/** Of each part: its courses; what of them is set; whether it has the measured top; what it stands over. */
function parts(runs: readonly Run[], ...stretches: SetStretch[]) {
  return partsOf(runs, stretches).map(({ courses, set: own, over }) => [
    courses,
    own && [own.from, own.to],
    (own?.tops.length ?? 0) > 0,
    over,
  ]);
}

describe("a lay of which something is set", () => {
  it("is parted where that ends", () => {
    assert.deepEqual(parts([run(null)], set(1, 6)), [
      [6, [1, 6], true, 0],
      [null, null, false, 6],
    ]);
    assert.deepEqual(parts([run(8)], set(1, 6)), [
      [6, [1, 6], true, 0],
      [2, null, false, 6],
    ]);
  });

  it("stays one where all of it is set, or nothing", () => {
    assert.deepEqual(parts([run(6)], set(1, 6)), [[6, [1, 6], true, 0]]);
    assert.deepEqual(parts([run(6)]), [[6, null, false, 0]]);
  });

  it("keeps the courses under the first that is set with it", () => {
    assert.deepEqual(parts([run(null)], set(2, 4))[0], [4, [2, 4], true, 0]);
  });

  it("has a part for each stretch", () => {
    assert.deepEqual(parts([run(null)], set(1, 2), set(3, 5)), [
      [2, [1, 2], true, 0],
      [3, [1, 3], true, 2],
      [null, null, false, 5],
    ]);
  });

  it("counts over the runs of a list of courses; the top is the last run's", () => {
    assert.deepEqual(parts([run(8), run(1), run(null)], set(1, 10)), [
      [8, [1, 8], false, 0],
      [1, [1, 1], false, 0],
      [1, [1, 1], true, 0],
      [null, null, false, 10],
    ]);
  });
});
