import assert from "node:assert/strict";
import { INCH, planOf, told, wallText } from "../telling.js";

const START = "bond stack\n joint 1/16\n across full tile from left\n up full course from bottom";
const lay = (set: string, start = START) => wallText(`lay field {\n ${start}\n ${set}\n}`);
const setOf = (text: string) => planOf(text).walls[0]!.lays.map(({ set }) => set);
const problems = (text: string) => told(text).filter((each) => each.startsWith("plan/"));

describe("courses that are set", () => {
  it("are counted from the lay's lowest, with the tops that were measured from left to right", () => {
    const [set, rest] = setOf(
      lay("set courses 1 to 6 top 36 1/4 at right, 36 1/8 at left, 36 at 12"),
    );
    assert.deepEqual([set!.from, set!.to, rest], [1, 6, null]);
    assert.deepEqual(set!.tops, [
      { at: 0, y: 36.125 * INCH },
      { at: 12 * INCH, y: 36 * INCH },
      { at: 60 * INCH, y: 36.25 * INCH },
    ]);
    assert.deepEqual(setOf(lay("set courses 1 to 6 top 36"))[0]!.tops, [
      { at: null, y: 36 * INCH },
    ]);
  });

  it("have the joint that they were set with, where the lay leaves a range to the rest", () => {
    const range = START.replace("1/16", "1/16 to 1/8");
    const [set, rest] = planOf(lay("set courses 1 to 6 joint 3/32", range)).walls[0]!.lays;
    assert.deepEqual([set!.joint.min, set!.joint.max], [INCH * 0.09375, INCH * 0.09375]);
    assert.deepEqual([rest!.joint.min, rest!.joint.max], [INCH / 16, INCH / 8]);
  });

  it("may be stated stretch by stretch, each on the one before", () => {
    const both = "set courses 7 to 9 top 54\n set courses 1 to 6 top 36";
    assert.deepEqual(
      setOf(lay(both)).map((set) => set && [set.from, set.to, set.tops[0]!.y / INCH]),
      [[1, 6, 36], [1, 3, 54], null],
    );
    assert.deepEqual(problems(lay(both)), []);
    assert.deepEqual(problems(lay("set courses 1 to 6\n set courses 8 to 9")), [
      "plan/set-courses [8] found course 8 as the first that is set over courses 1 to 6, wanted course 7",
    ]);
  });

  it("may be stated in the wall, where it has one lay", () => {
    const one = wallText(`lay field {\n ${START}\n}\nset courses 1 to 6`);
    assert.equal(setOf(one)[0]!.to, 6);
    const two = wallText(
      `lay field {\n ${START}\n covers bottom to 30\n}\nlay field {\n ${START}\n}\nset courses 1 to 6`,
    );
    assert.deepEqual(setOf(two), [null, null]);
    assert.deepEqual(problems(two), [
      "plan/set-courses [set] found `set` in a wall of several lays, wanted it in the lay whose courses are set",
    ]);
  });

  it("are told where they can't be counted, and nothing is set then", () => {
    for (const [set, wanted] of [
      ["set courses 0 to 6", "[0] found no number of courses, wanted a whole one from 1"],
      ["set courses 1 to 2.5", "[2.5] found no number of courses"],
      ["set courses 6 to 2", "[6] found courses 6 to 2, wanted the lower one first"],
    ] as const) {
      assert.ok(problems(lay(set))[0]!.includes(wanted), problems(lay(set)).join());
      assert.deepEqual(setOf(lay(set)), [null]);
    }
  });

  it("are told where a top has no place among several, or one beside the wall", () => {
    assert.match(
      problems(lay("set courses 1 to 6 top 36, 37 at right"))[0]!,
      /\[36\] found a height without its place/,
    );
    assert.match(
      problems(lay("set courses 1 to 6 top 36 at 61"))[0]!,
      /\[61\] found a place at 61 in, wanted one on the wall/,
    );
  });
});
