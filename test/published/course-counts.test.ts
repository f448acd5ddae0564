import assert from "node:assert/strict";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { heightsOf, inches } from "../support/layout.js";

// Derived: 3 x 6 in tile on 80 in of wall, soft joints of 1/8 in at both ends, joints of 1/16 in: 26
// whole courses and a sliver of 1/8 in. 25 joints wider by 0.0075 in make 26 whole courses. That
// widened joints take a sliver up is published (fcimag.com/articles/96540).
describe("courses up an 80 in wall (derived; the principle: fcimag.com/articles/96540)", () => {
  const heights = (joint: string) => heightsOf(solved(joint).laid);
  const solved = (joint: string) =>
    firstWall(
      solveClean(
        freeWall({
          face: "6 x 3",
          size: "60 x 80",
          joint,
          wall: ["bottom floor movement 1/8", "top ceiling movement 1/8"],
          across: "tile centred on wall",
          up: "full course from bottom",
        }),
      ),
    );
  const whole = Array.from({ length: 26 }, () => inches(3));

  it("joints of 1/16 in leave a sliver of 1/8 in over 26 whole courses", () => {
    assert.deepEqual(heights("1/16"), [...whole, inches(1 / 8)]);
  });

  it("joints of 0.07 in, 0.0075 in more, make 26 whole courses", () => {
    assert.deepEqual(heights("0.07"), whole);
  });

  // The last joint may stand open under the soft joint at the ceiling: 26 T + 26 J = 79-3/4 in.
  it("the solver, given a range, takes the narrowest joint that leaves 26 whole courses", () => {
    const { laid } = solved("1/16 to 1/8");
    assert.equal(laid.joint, Math.ceil(inches(79.75 - 78) / 26));
    assert.deepEqual(heightsOf(laid), whole);
  });
});
