import assert from "node:assert/strict";
import { materialsOf } from "../../../src/takeoff/materials/materials.js";
import { solveClean } from "../../support/solve-text.js";

/** Square inches of bare wall. */
function membraneOf(lines: string): number {
  const text = `tile field {\n face 6 x 3\n thickness 1/4\n}\nwall back {\n${lines}\nlay field {\n bond stack\n joint 1/8\n}\n}\n`;
  const [membrane] = materialsOf(solveClean(text).solved).membrane;
  assert.equal(membrane!.wall, "back");
  return Number(membrane!.doubleArea) / 2 / 25_400_000 ** 2;
}

describe("the membrane", () => {
  it("covers the bare wall, whatever its joints", () => {
    assert.equal(membraneOf("size 60 x 96\nleft wall movement 1/2"), 60 * 96);
  });

  it("follows measured sides", () => {
    assert.equal(membraneOf("size 60 x 96\nbottom pan measured 0: 0, 60: -1"), 60 * 96.5);
  });

  it("leaves out windows and doors, down to the floor", () => {
    const window = "window sash {\n at 18, 40\n size 24 x 36\n movement 1/8\n}\n";
    const door = "door way {\n at 2, 1\n size 10 x 30\n}\n";
    assert.equal(membraneOf(`size 60 x 96\n${window}${door}`), 60 * 96 - 24 * 36 - 10 * 31);
  });

  it("covers a niche's back", () => {
    assert.equal(membraneOf("size 60 x 96\nniche soap {\n at 18, 40\n size 12 x 12\n}"), 60 * 96);
  });

  it("goes on behind what stands before the wall", () => {
    const bench = "bench seat {\n at 0\n size 36 x 18\n}\n";
    const soffit = "soffit duct {\n at 30\n size 30 x 12\n}\n";
    const curb = "curb sill {\n at 54\n size 6 x 5\n}\n";
    assert.equal(membraneOf(`size 60 x 96\n${bench}${soffit}${curb}`), 60 * 96);
  });

  it("goes behind pipes", () => {
    assert.equal(membraneOf("size 60 x 96\nhole valve at 30, 40 across 4"), 60 * 96);
  });
});
