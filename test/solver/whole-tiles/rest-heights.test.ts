import assert from "node:assert/strict";
import { restHeights } from "../../../src/solver/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

/** Courses of 50 mm with joints of 2, from 0 up: bottoms at 0, 52, 104 ..., tops at 50, 102 ...; 400 high. */
const restPlan = (opening: string, start = "up full course from bottom"): string => `plan "rests"
units mm
tile field {
  face 100 x 50
  thickness 8
}
wall back {
  size 600 x 400
  bottom free
  top free
${opening}
  lay field {
    bond stack
    joint 2
    across tile centred on wall
    ${start}
  }
}
`;

const restOf = (opening: string, start?: string) => {
  const { wall, laid } = firstWall(solveClean(restPlan(opening, start)));
  const found = restHeights(wall, laid, wall.wall.openings[0]!);
  const mm = (nm: number | null) => (nm === null ? null : nm / 1e6);
  return found && [found.edge, found.isWhole, mm(found.below), mm(found.above)];
};

describe("the heights of a bench, a curb or a soffit", () => {
  it("are those over which a course begins, less the joint round it", () => {
    const bench = (up: string) =>
      restOf(`bench seat {\n at 100\n size 200 x ${up}\n movement 3\n}`);
    // Bottoms at 104 and 156 mm, less 3.
    assert.deepEqual(bench("140"), ["top", false, 101, 153]);
    assert.deepEqual(bench("153"), ["top", true, 101, 205]);
    assert.deepEqual(bench("153.000001"), ["top", false, 153, 205]);
    assert.deepEqual(bench("30"), ["top", false, null, 49], "nothing is left of it below");
    assert.deepEqual(bench("395"), ["top", false, 361, null], "no tile is over it above");
  });

  it("are those under which a course ends, for a soffit", () => {
    // It hangs from 400; tops at 258 and 310 mm, and the joint.
    assert.deepEqual(restOf("soffit s {\n at 100\n size 200 x 110\n movement 3\n}"), [
      ...["bottom", false, 261, 313],
    ]);
  });

  it("are always whole where the courses start from it, and none of a window", () => {
    const seat = "bench seat {\n at 100\n size 200 x 140\n movement 3\n}";
    assert.equal(restOf(seat, "up full course over seat")![1], true);
    assert.equal(restOf("window w {\n at 100, 100\n size 200 x 140\n}"), null);
  });
});
