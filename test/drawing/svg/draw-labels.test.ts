import assert from "node:assert/strict";
import { makeLabel } from "../../../src/drawing/labels.js";
import { drawBadges, drawLabels } from "../../../src/drawing/svg/draw-labels.js";
import { drawn, valuesOf } from "../support/sheet.js";

describe("drawing labels", () => {
  const label = (text: string, x: number, size = 10) =>
    makeLabel({ text, role: "dimension", x, y: 0, size });

  it("says what labels share once, and each text at its place", () => {
    const svg = drawn((into) => drawLabels(into, [label("3", 0), label("4", 50)], 10));
    assert.equal(valuesOf(svg, "font-size").length, 1);
    assert.deepEqual(valuesOf(svg, "x"), ["0", "50"]);
    assert.ok(svg.includes('<text x="50" y="3.6">4</text>'));
  });

  it("gives figures over lines a halo of paper", () => {
    const svg = drawn((into) => drawLabels(into, [label("3", 0)], 10));
    assert.ok(svg.includes('paint-order="stroke"') && svg.includes("gl-stroke-paper"));
    const note = makeLabel({ text: "a", role: "note", x: 0, y: 0, size: 10 });
    assert.ok(!drawn((into) => drawLabels(into, [note], 10)).includes("paint-order"));
  });

  it("turns a caption upward", () => {
    const caption = makeLabel({ text: "a", role: "caption", x: 9, y: 5, size: 10, upward: true });
    const svg = drawn((into) => drawLabels(into, [caption], 10));
    assert.ok(svg.includes('transform="translate(12.6 5) rotate(-90)"'));
  });
});

describe("drawing badges", () => {
  it("gives each severity a shape of its own, with its number", () => {
    const shapes = (["error", "warning", "information"] as const).map((severity) => {
      const badge = { severity, middle: { x: 0, y: 0 }, radius: 10, number: "7" };
      const svg = drawn((into) => drawBadges(into, [badge]));
      assert.ok(svg.includes(">7</text>"));
      return valuesOf(svg, "d")[0] ?? "circle";
    });
    assert.equal(new Set(shapes).size, 3);
  });
});
