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

  it("covers a niche's four sides where the plan says how deep they are", () => {
    const niche = (lines: string) => `niche soap {\n at 18, 40\n size 12 x 14\n ${lines}\n}\n`;
    // 2 x (12 + 14) in of sides, 3 1/2 in deep.
    const sides = 52 * 3.5;
    assert.equal(membraneOf(`size 60 x 96\n${niche("depth 3 1/2")}`), 60 * 96 + sides);
    assert.equal(membraneOf(`size 60 x 96\n${niche("depth 3 1/2\n fall 1/8")}`), 60 * 96 + sides);
    const bench = "bench seat {\n at 0\n size 16 x 18\n depth 12\n}\n";
    assert.equal(membraneOf(`size 60 x 96\n${bench}`), 60 * 96);
  });

  it("is short of no niche whose sill falls towards the room", () => {
    // 12 x 12 in, 4 in deep, falling 1 in: back 12 x 11, two sides 4 x 11.5, head 12 x 4, sill 12 x sqrt(17).
    const sloped = 12 * 11 + 2 * 4 * 11.5 + 12 * 4 + 12 * Math.sqrt(17);
    const niche = "niche soap {\n at 18, 40\n size 12 x 12\n depth 4\n fall 1\n}\n";
    assert.ok(membraneOf(`size 60 x 96\n${niche}`) - (60 * 96 - 12 * 12) >= sloped);
  });

  it("goes on behind what stands before the wall", () => {
    const bench = "bench seat {\n at 0\n size 36 x 18\n}\n";
    const soffit = "soffit duct {\n at 30\n size 30 x 12\n}\n";
    const curb = "curb sill {\n at 54\n size 6 x 5\n}\n";
    assert.equal(membraneOf(`size 60 x 96\n${bench}${soffit}${curb}`), 60 * 96);
  });

  it("stands behind tile that is set", () => {
    const standing = (set: string) => {
      const lay = `lay field {\n bond stack\n joint 1/8\n across joint centred on wall\n up full course from bottom\n${set}}\n`;
      const text = `tile field {\n face 6 x 3\n thickness 1/4\n}\nwall back {\nsize 60 x 96\n${lay}}\n`;
      return materialsOf(solveClean(text).solved).membrane.map(({ stands }) => stands);
    };
    assert.deepEqual(standing(""), [false]);
    assert.deepEqual(standing(" set courses 1 to 2\n"), [true]);
  });

  it("goes behind pipes", () => {
    assert.equal(membraneOf("size 60 x 96\nhole valve at 30, 40 across 4"), 60 * 96);
  });
});
