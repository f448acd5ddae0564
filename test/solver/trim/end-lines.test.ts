import assert from "node:assert/strict";
import { endAt, outerLine, slopeCuts, trimOver } from "../../../src/solver/trim/end-lines.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

const { wall, region } = firstWall(
  solveClean(`units mm
tile t {\nface 100 x 50\nthickness 8\n}
trim edging {\nface 1000 x 20\nthickness 8\n}
wall w {
  outline 0, 0 to 800, 0 to 800, 900 to 0, 300
  bottom floor movement 3
  left wall movement 3
  right wall movement 3
  top free trim edging
  lay t {\nbond stack\njoint 2\nacross full tile from left\nup full course from bottom\n}
}
`),
).wall;
const JOINT = 2_000_000;

describe("where trim ends at a side", () => {
  it("is the outer edge of the trim there, which is the bare side", () => {
    assert.equal(trimOver(wall, "top", JOINT), 22_000_000);
    assert.equal(trimOver(wall, "left", JOINT), 0);
    const { value } = outerLine(wall, region, "top", JOINT);
    assert.ok(Math.abs(value[0]! - 300_000_000) < 5 && Math.abs(value[1]! - 900_000_000) < 5);
    assert.deepEqual(outerLine(wall, region, "left", JOINT), region.left);
  });

  it("is as far as any of its width goes along a slope, and square elsewhere", () => {
    const line = { at: [0, 100], value: [0, 50] };
    const width = { low: 20, high: 40 };
    assert.equal(
      endAt(wall, line, "top", width),
      20,
      "to the higher end: it is cut along the slope",
    );
    assert.equal(
      endAt(wall, line, "bottom", width),
      20,
      "a measured bottom leaves the whole width free",
    );
  });

  it("is cut along slopes of the outline alone", () => {
    const box = { left: 100, bottom: 100, right: 200, top: 200 };
    const line = { at: [0, 800], value: [300, 900] };
    assert.equal(slopeCuts(wall, { top: line, bottom: line, left: line }, box).length, 1);
  });
});
