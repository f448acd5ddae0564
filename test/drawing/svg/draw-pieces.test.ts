import assert from "node:assert/strict";
import { drawPieces } from "../../../src/drawing/svg/draw-pieces.js";
import { planOf, wallOf, wallText } from "../support/scene-of.js";
import { drawn, valuesOf } from "../support/sheet.js";

describe("drawing pieces", () => {
  const wall = wallOf(planOf(wallText("  hole h at 9, 9 across 1")));
  const svg = drawn((into) => drawPieces(into, wall, 10));

  it("makes one path a course and kind", () => {
    const ids = wall.pieces.map(({ kind, course }) => `gl-back-${kind}-${course}`);
    assert.ok(ids.every((id) => valuesOf(svg, "id").includes(id)));
  });

  it("writes whole tiles as plain rectangles in their true places", () => {
    const first = wall.pieces.find(({ kind, course }) => kind === "whole" && course === 1)!;
    const line = svg.split("\n").find((each) => each.includes('"gl-back-whole-1"'))!;
    assert.ok(line.includes("M3.175 -3.175H155.575V-79.375H3.175z"), line);
    assert.equal(line.match(/M/g)!.length, first.boxes.length / 4);
  });

  it("leaves whole tiles plain and hatches the others", () => {
    const ids = valuesOf(svg, "id");
    assert.ok(!ids.includes("gl-back-whole-hatch"));
    assert.ok(ids.includes("gl-back-cut-hatch") && ids.includes("gl-back-hole-hatch"));
  });
});
