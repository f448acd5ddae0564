import assert from "node:assert/strict";
import { solveText } from "../../support/solve-text.js";
import { wallOfLays } from "./lays-text.js";

function read(courses: string, joint = "0") {
  const lay = `lay field {\n bond stack\n joint ${joint}\n across full tile from left\n courses ${courses}\n}`;
  const { solved, diagnostics } = solveText(wallOfLays(lay));
  const told = diagnostics.filter(({ code }) => code.startsWith("plan/"));
  return {
    counts: solved.walls[0]!.lays.map(({ lay: { name }, courses: all }) => `${all.length} ${name}`),
    told: told.map(({ code, message }) => `${code} ${message}`),
  };
}

describe("a list of courses", () => {
  it("counts courses of the lay's own tile where it names none", () => {
    assert.deepEqual(read("3"), { counts: ["3 field"], told: [] });
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

  it("has the rest last, and one joint", () => {
    assert.match(read("rest, 2 of liner").told.join(), /found the rest before other courses/);
    assert.match(
      read("2, rest of liner", "0 to 1/8").told.join(),
      /found a range, wanted one joint/,
    );
  });
});
