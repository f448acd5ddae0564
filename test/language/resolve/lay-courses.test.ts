import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { solveText } from "../../support/solve-text.js";
import { wallOfLays } from "./lays-text.js";

function read(courses: string, joint = "0") {
  const lay = `lay field {\n bond stack\n joint ${joint}\n across full tile from left\n courses ${courses}\n}`;
  const { solved, diagnostics } = solveText(wallOfLays(lay));
  const told = diagnostics.filter(({ code }) => code.startsWith("plan/"));
  return {
    joints: solved.walls[0]!.lays.map(({ joint: width }) => width),
    counts: solved.walls[0]!.lays.map(({ lay: { name }, courses: all }) => `${all.length} ${name}`),
    told: told.map(({ code, message }) => `${code} ${message}`),
  };
}

describe("a list of courses", () => {
  it("counts courses of the lay's own tile where it names none", () => {
    assert.deepEqual(read("3"), { counts: ["3 field"], told: [], joints: [0] });
    assert.deepEqual(read("3, 2 of liner").counts, ["3 field", "2 liner"]);
    // 24 in - 3 x 4 in - 1 in leave 11 in: three courses of 4 in, the last one cut.
    assert.deepEqual(read("3, 1 of liner, rest").counts, ["3 field", "1 liner", "3 field-2"]);
  });

  it("stops at the top of the wall", () => {
    assert.deepEqual(read("100").counts, ["6 field"]);
  });

  it("tells what is no number of courses, and lays the others", () => {
    for (const bad of ["0", "1/2", "2 1/2", "99999999", '3"']) {
      const { counts, told } = read(`2, ${bad} of liner`);
      assert.deepEqual(counts, ["2 field"], bad);
      assert.match(told.join(), /^plan\/lay-courses found no number of courses/, bad);
    }
  });

  it("has the rest last", () => {
    assert.match(read("rest, 2 of liner").told.join(), /found the rest before other courses/);
  });

  it("has one joint out of a range for all its tiles", () => {
    // Three courses of 4 in and five of 1 in with joints of 1/2 in between are 20 1/2 in high: the sixth liner ends at 22.
    const { told, joints } = read("3, rest of liner", "1/8 to 1/2");
    assert.deepEqual(told, []);
    assert.equal(joints.length, 2);
    assert.equal(joints[0], joints[1]);
    assert.ok(NM_PER.inch / 8 <= joints[0]! && joints[0]! <= NM_PER.inch / 2);
  });
});
