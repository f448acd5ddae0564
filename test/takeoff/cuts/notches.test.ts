import assert from "node:assert/strict";
import { notchesOf } from "../../../src/takeoff/cuts/notches.js";
import { cutWall, mm } from "../../support/cut-wall.js";

function notches(window: string, label: string, size = "304 x 154") {
  const cut = cutWall({ size, wall: [`window sash {\n${window}\nmovement 0\n}`] });
  return notchesOf(cut.laid, cut.piece(label).index);
}

describe("what openings take out of a piece", () => {
  it("is an L at a corner of the opening, open on two sides", () => {
    assert.deepEqual(notches("at 60, 30\nsize 180 x 100", "B-01-01"), [
      {
        opens: ["right", "top"],
        box: { left: mm(60), bottom: mm(30), right: mm(100), top: mm(50) },
      },
    ]);
  });

  it("is a U where the opening is narrower than the piece", () => {
    assert.deepEqual(notches("at 120, 30\nsize 60 x 100", "B-01-02"), [
      { opens: ["top"], box: { left: mm(18), bottom: mm(30), right: mm(78), top: mm(50) } },
    ]);
  });

  it("is a hole with four corners where it lies inside", () => {
    assert.deepEqual(notches("at 110, 10\nsize 50 x 20", "B-01-02"), [
      { opens: [], box: { left: mm(8), bottom: mm(10), right: mm(58), top: mm(30) } },
    ]);
  });

  it("is nothing where the opening cuts straight through", () => {
    assert.deepEqual(notches("at 102, 30\nsize 100 x 100", "B-01-02"), []);
  });

  it("is as deep as it goes into what the sides of the wall leave", () => {
    assert.deepEqual(notches("at 60, 30\nsize 20 x 20", "B-01-01", "80 x 50"), [
      {
        opens: ["right", "top"],
        box: { left: mm(60), bottom: mm(30), right: mm(80), top: mm(50) },
      },
    ]);
  });
});
