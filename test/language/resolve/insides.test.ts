import assert from "node:assert/strict";
import { told, wallOf, wallText } from "../telling.js";

const niche = (lines: string, kind = "niche"): string =>
  `  ${kind} soap {\n    at 10, 10\n    size 12 x 6\n    ${lines.replaceAll("; ", "\n    ")}\n  }`;
const toldOf = (lines: string): string[] => told(wallText(lines));
const insideOf = (lines: string) => wallOf(niche(lines)).openings[0]!.inside;

describe("an opening's inside", () => {
  it("is told of a door and a soffit, which have no sill, and left out", () => {
    for (const kind of ["door", "soffit"]) {
      assert.deepEqual(toldOf(niche("depth 4", kind)), [
        `plan/inside [depth] found a depth of a ${kind}, wanted it of a window, a niche, a bench or a curb`,
      ]);
      assert.equal(wallOf(niche("depth 4", kind)).openings[0]!.inside, null);
    }
  });

  it("has a fall only over a depth", () => {
    assert.deepEqual(toldOf(niche("fall 1/4")), [
      "plan/inside [fall] found a fall without a depth, wanted a `depth` in this block",
    ]);
    assert.equal(insideOf("fall 1/4"), null);
  });

  it("has a depth of more than nothing", () => {
    assert.deepEqual(toldOf(niche("depth 0; fall 1/4")), [
      "plan/size [0] found 0 in, wanted more than zero",
    ]);
  });

  it("falls by less than the opening is high, either way", () => {
    assert.deepEqual(toldOf(niche("depth 4; fall 5 63/64")), []);
    for (const fall of ["6", "-6"]) {
      assert.deepEqual(toldOf(niche(`depth 4; fall ${fall}`)), [
        `plan/inside [${fall}] found ${fall} in, wanted less than the 6 in that the niche is high`,
      ]);
    }
    assert.equal(insideOf("depth 4; fall 6")!.fall, null);
  });

  it("is said once", () => {
    assert.deepEqual(toldOf(niche("depth 4; depth 5")), [
      "plan/said-twice [depth] found `depth` again, wanted it once in this block",
    ]);
  });
});
