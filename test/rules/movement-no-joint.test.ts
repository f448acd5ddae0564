import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "movement/no-joint";
const PARTED = "a joint over a course, or the wall parted in two lays there, is wanted";

const told = (lay: string, more: WallText = {}) =>
  messages({ lay, size: "60 x 30", ...more }, CODE);

describe("movement/no-joint", () => {
  it("tells a place at which the bond has no head joint that goes through", () => {
    assert.deepEqual(told("movement joint at 30", { bond: "running 1/2" }), [
      `the bond has no head joint that goes through at 30 in; ${PARTED}`,
    ]);
    assert.deepEqual(told("movement joint at 30"), []);
  });

  it("tells tiles of a list whose head joints are not in line", () => {
    const plan = "tile liner {\n face 5 x 1\n thickness 5/16\n}";
    const lay = "courses 3 of field, 1 of liner, rest of field\nmovement joint at 30";
    assert.deepEqual(told(lay, { plan }), [
      `the head joints of the lay's tiles are not in line at 30 in; ${PARTED}`,
    ]);
  });

  it("tells a place beside the tile", () => {
    assert.deepEqual(told("movement joint at 61"), [
      "lay field has no head joint at 61 in; a place between its first and its last tile is wanted",
    ]);
  });

  it("tells a course that there isn't, and one that nothing stands over", () => {
    assert.deepEqual(told("movement joint over course 11"), [
      "lay field has 10 courses, and none 11; a course that is there is wanted",
    ]);
    assert.deepEqual(told("movement joint over course 10"), [
      "no tile stands over course 10; a course with tile over it is wanted",
    ]);
    assert.deepEqual(told("movement joint over course 9"), []);
  });

  it("tells a joint that is soft already, as a warning", () => {
    const lay = "movement joint at 30\nmovement joint at 31";
    assert.deepEqual(told(lay), ["the joint at 31 in is soft already; it is wanted once"]);
    const [found] = findings({ lay, size: "60 x 30" }, CODE);
    assert.equal(found!.severity, "warning");
  });

  it("is an error at the statement, and silenced in its lay", () => {
    const lay = "movement joint at 61";
    const [found] = findings({ lay, size: "60 x 30" }, CODE);
    assert.equal(found!.severity, "error");
    assert.equal(found!.range.end.character - found!.range.start.character, "movement".length);
    const allowed = findings(
      { lay: `${lay}\nallow movement/no-joint "later"`, size: "60 x 30" },
      CODE,
    );
    assert.equal(allowed[0]!.allowed, "later");
  });
});
