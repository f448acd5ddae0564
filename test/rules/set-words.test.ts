import assert from "node:assert/strict";
import { courseName, setName, setWords } from "../../src/rules/index.js";
import { solveClean } from "../support/solve-text.js";
import { setText } from "./set-text.js";

const laysOf = (text: string) => solveClean(text).solved.walls[0]!.lays;

describe("the words of what is set", () => {
  it("are the courses as they are counted on the wall", () => {
    const lays = laysOf(setText("set courses 2 to 4\n set courses 5 to 5"));
    assert.deepEqual(lays.map(setName), ["courses 2 to 4", "course 5", null]);
    assert.equal(courseName(lays[2]!, 1), "course 6");
  });

  it("end a finding of theirs: one course is set, several are", () => {
    assert.equal(setWords("course 3"), "; course 3 is set: it can no longer be mended");
    for (const several of ["courses 1 to 6", "course 1 and course 4"]) {
      assert.equal(setWords(several), `; ${several} are set: it can no longer be mended`);
    }
  });

  it("name a panel, whose courses are counted by themselves", () => {
    const panel =
      "lay field {\n bond stack\n joint 1/8\n across full tile from left\n up full course from bottom\n" +
      " at 6, 6\n size 12 x 9 3/8\n set courses 1 to 2\n }";
    const named = laysOf(setText("", { wall: panel })).flatMap((lay) => setName(lay) ?? []);
    assert.deepEqual(named, ["courses 1 to 2 of field"]);
  });
});
