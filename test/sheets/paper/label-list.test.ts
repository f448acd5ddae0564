import assert from "node:assert/strict";
import { labelList } from "../../../src/sheets/paper/label-list.js";

const labels = (courses: readonly number[], place: string) =>
  courses.map((course) => `B-${`${course}`.padStart(2, "0")}-${place}`);

describe("labelList", () => {
  it("tells neighbours in a course by the first and the last", () => {
    const row = ["B-09-02", "B-09-03", "B-09-04", "B-09-06"];
    assert.equal(labelList(row), "B-09-02 to B-09-04, B-09-06");
  });

  it("tells pieces at one place of evenly spaced courses by the first and the last", () => {
    assert.equal(labelList(labels([2, 4, 6, 8], "01")), "B-02-01 to B-08-01, every 2nd course");
    assert.equal(labelList(labels([1, 2, 3], "01")), "B-01-01 to B-03-01, every course");
    assert.equal(labelList(labels([1, 4, 7], "01")), "B-01-01 to B-07-01, every 3rd course");
    assert.equal(labelList(labels([1, 5, 9], "01")), "B-01-01 to B-09-01, every 4th course");
  });

  it("keeps runs apart from what stands beside them", () => {
    const mixed = [...labels([2, 4, 6], "01"), "B-09-05"];
    assert.equal(labelList(mixed), "B-02-01 to B-06-01, every 2nd course; B-09-05");
  });

  it("tells two by themselves, and the further parts of a tile", () => {
    assert.equal(labelList(["B-01-01", "B-01-02"]), "B-01-01, B-01-02");
    assert.equal(labelList(["B-01-01b", "B-01-02b", "B-01-03b"]), "B-01-01b, B-01-02b, B-01-03b");
  });

  it("loses no label and adds none", () => {
    const all = labels([1, 2, 3, 5, 7, 9, 10], "03");
    assert.equal(
      labelList(all),
      "B-01-03 to B-03-03, every course; B-05-03 to B-09-03, every 2nd course; B-10-03",
    );
  });
});
