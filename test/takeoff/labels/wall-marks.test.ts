import assert from "node:assert/strict";
import { wallMarks } from "../../../src/takeoff/labels/wall-marks.js";

describe("the marks of walls", () => {
  it("are the shortest beginnings of names that tell them apart, in capitals", () => {
    assert.deepEqual(wallMarks(["back", "plumbing", "end"]), ["B", "P", "E"]);
    assert.deepEqual(wallMarks(["first", "second", "third", "fourth"]), ["FI", "S", "T", "FO"]);
  });

  it("don't depend on the walls' order", () => {
    assert.deepEqual(wallMarks(["fourth", "third", "first"]), ["FO", "T", "FI"]);
  });

  it("are the whole name where another's begins with it", () => {
    assert.deepEqual(wallMarks(["end", "end2"]), ["END", "END2"]);
    assert.deepEqual(wallMarks(["a"]), ["A"]);
    assert.deepEqual(wallMarks([]), []);
  });

  it("are the name as it is written where another differs in capitals alone", () => {
    assert.deepEqual(wallMarks(["Back", "back", "bath"]), ["Back", "back", "BAT"]);
  });

  it("are never the same for two walls", () => {
    const names = ["a", "A", "ab", "aB", "b-1", "b-10", "b_1", "bb"];
    assert.equal(new Set(wallMarks(names)).size, names.length);
  });
});
