import assert from "node:assert/strict";
import { INCH, planOf, told, wallText } from "../telling.js";

const LAY = "bond stack\n joint 1/8";
const lay = (lines: string, more = "") => wallText(`lay field {\n ${LAY}\n ${lines}\n}\n${more}`);
const softOf = (text: string) =>
  planOf(text).walls[0]!.lays.map(({ soft }) =>
    soft.map((joint) => (joint.kind === "head" ? `at ${joint.x / INCH}` : `over ${joint.over}`)),
  );
const betweenOf = (text: string) =>
  planOf(text).walls[0]!.lays.map(({ area }) => {
    const joint = area?.joint;
    return joint ? `${joint.kind} ${joint.width / INCH}` : null;
  });
const problems = (text: string) => told(text).filter((each) => each.startsWith("plan/"));

describe("soft joints of a lay", () => {
  it("are at places and over courses, as many as there are", () => {
    const lines =
      "movement joint at 30\n movement joint over course 4\n movement joint at 12in + 3";
    assert.deepEqual(softOf(lay(lines)), [["at 30", "over 4", "at 15"]]);
    assert.deepEqual(problems(lay(lines)), []);
  });

  it("are of each lay that a block is made of", () => {
    const list = "courses 3 of field, rest of field\n movement joint over course 3";
    assert.deepEqual(softOf(lay(list)), [["over 3"], ["over 3"]]);
  });

  it("may be stated in the wall, where it has one lay", () => {
    assert.deepEqual(softOf(lay("", "movement joint over course 4")), [["over 4"]]);
    const two = `covers bottom to 20\n}\nlay field {\n ${LAY}\n}\nmovement joint over course 4\n`;
    assert.deepEqual(problems(wallText(`lay field {\n ${LAY}\n ${two}`)), [
      "plan/soft-joint [movement] found `movement joint` in a wall of several lays, wanted it in the lay whose joint is soft",
    ]);
  });

  it("are over whole courses", () => {
    for (const course of ["0", "1/2", "3in"]) {
      assert.deepEqual(problems(lay(`movement joint over course ${course}`)), [
        `plan/soft-joint [${course}] found no number of courses, wanted a whole one from 1 to 10000, such as 8`,
      ]);
      assert.deepEqual(softOf(lay(`movement joint over course ${course}`)), [[]]);
    }
  });
});

describe("the joint between lays", () => {
  const second = `lay field {\n ${LAY}\n}\n`;

  it("is hard, or soft where that is said", () => {
    assert.deepEqual(betweenOf(lay("covers bottom to 20\n between 1/4", second)), [
      "joint 0.25",
      null,
    ]);
    assert.deepEqual(betweenOf(lay("covers bottom to 20\n between movement 1/4", second)), [
      "movement 0.25",
      null,
    ]);
  });

  it("may be stated by the lay that has the rest of the wall", () => {
    const rest = `lay field {\n ${LAY}\n between movement 1/4\n}\n`;
    assert.deepEqual(betweenOf(lay("covers bottom to 20", rest)), [null, "movement 0.25"]);
  });

  it("is no less than nothing", () => {
    assert.deepEqual(problems(lay("covers bottom to 20\n between -1", second)), [
      "plan/size [-1] found -1 in, wanted zero or more",
    ]);
  });
});
