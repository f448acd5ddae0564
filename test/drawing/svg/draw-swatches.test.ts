import assert from "node:assert/strict";
import type { SwatchKind } from "../../../src/drawing/index.js";
import { drawSwatches } from "../../../src/drawing/svg/draw-swatches.js";
import { drawn } from "../support/sheet.js";

const KINDS: readonly SwatchKind[] = [
  "whole",
  "cut",
  "notch",
  "scribe",
  "hole",
  "sliver",
  "grout",
  "soft",
  "hidden",
  "build",
  "trim",
  "level",
  "centre",
];

describe("the legend's samples", () => {
  it("differ from each other even without colour", () => {
    const samples = KINDS.map((kind) => {
      const box = { left: 0, top: 0, right: 20, bottom: 10 };
      const svg = drawn((into) => drawSwatches(into, [{ kind, box }], 10));
      return svg.replace(/#[0-9a-f]{6}/g, "").replace(/ (?:class|id|data-kind)="[^"]*"/g, "");
    });
    // Whole tiles and trim are both plain there: what tells them apart is where they are.
    assert.equal(new Set(samples).size, KINDS.length - 1);
  });
});
