import assert from "node:assert/strict";
import {
  drawDimensions,
  drawLines,
  drawMarks,
  lineStyle,
} from "../../../src/drawing/svg/draw-lines.js";
import { planOf, wallOf, wallText } from "../support/scene-of.js";
import { drawn, valuesOf } from "../support/sheet.js";

describe("drawing lines", () => {
  const wall = wallOf(planOf(wallText()));

  it("tells the level line, the centre line and leaders apart by their dashes", () => {
    const told = (["level", "centre", "leader"] as const).map(
      (kind) => lineStyle(kind, 10)["stroke-dasharray"],
    );
    assert.equal(new Set(told).size, 3);
    const svg = drawn((into) => drawLines(into, wall, 10));
    assert.deepEqual(valuesOf(svg, "id"), ["gl-back-centre", "gl-back-level"]);
  });

  it("draws each rank of dimensions as a group: thin lines, the line, its ticks", () => {
    const svg = drawn((into) => drawDimensions(into, wall, 10));
    assert.deepEqual(
      valuesOf(svg, "id"),
      wall.dimensions.map(({ part }) => `gl-back-dimension-${part}`),
    );
    assert.equal(valuesOf(svg, "d").length, 3 * wall.dimensions.length);
  });

  it("outlines pieces with errors, warnings and notes each in its own dashes", () => {
    const ring = [0, 0, 10, 0, 10, -10, 0, -10];
    const marks = (["error", "warning", "information"] as const).map((severity) => ({
      severity,
      piece: "back/1/1",
      ring,
    }));
    const svg = drawn((into) => drawMarks(into, { ...wall, marks }, 10));
    assert.equal(valuesOf(svg, "d").length, 3);
    assert.equal(new Set(valuesOf(svg, "stroke-dasharray")).size, 2);
  });
});
