import assert from "node:assert/strict";
import { drawHatched, type HatchId } from "../../../src/drawing/svg/hatches.js";
import { drawn, valuesOf } from "../support/sheet.js";

const SQUARE = [0, 0, 100, 0, 100, -100, 0, -100];

function hatched(hatch: HatchId): string {
  const shapes = [{ id: "gl-x-1", pieces: [[SQUARE]] }];
  return drawn((into) => drawHatched(into, { hatch, id: "gl-x", shapes }, 20));
}

describe("hatched shapes", () => {
  it("are drawn once, under the lines of their hatch", () => {
    const svg = hatched("cut");
    assert.deepEqual(valuesOf(svg, "id"), ["gl-x", "gl-x-1", "gl-x-hatch"]);
    assert.equal(valuesOf(svg, "d")[0], "M0 0H100V-100H0z");
  });

  it("differ by direction, spacing, weight or dashes from every other kind of piece", () => {
    const kinds = ["cut", "notch", "scribe", "hole", "sliver"] as const;
    const lines = kinds.map((kind) => {
      const svg = hatched(kind);
      return `${valuesOf(svg, "d")[1]!} ${valuesOf(svg, "stroke-dasharray").join()}`;
    });
    assert.equal(new Set(lines).size, kinds.length);
  });

  it("have a line round them where they are slivers", () => {
    assert.equal(valuesOf(hatched("sliver"), "stroke-width").length, 2);
    assert.equal(valuesOf(hatched("cut"), "stroke-width").length, 1);
  });

  it("leave what is below a hidden strip to be seen", () => {
    assert.ok(hatched("hidden").includes('fill-rule="evenodd" fill="none"'));
  });

  it("are nothing when there are none", () => {
    const svg = drawn((into) => drawHatched(into, { hatch: "cut", id: "gl-x", shapes: [] }, 20));
    assert.equal(svg, "<g/>\n");
  });
});
