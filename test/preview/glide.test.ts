import assert from "node:assert/strict";
import { between } from "../../src/preview/glide.js";
import type { View } from "../../src/preview/view.js";

describe("a glide between two views", () => {
  const from: View = { x: 0, y: 10, scale: 1, hold: "free" };
  const to: View = { x: 100, y: 30, scale: 4, hold: "whole" };

  it("zooms by equal factors in equal times", () => {
    const half = between(from, to, 0.5);
    assert.deepEqual([half.x, half.y], [50, 20]);
    assert.ok(Math.abs(half.scale - 2) < 1e-12);
  });

  it("begins and ends where it should", () => {
    assert.ok(Math.abs(between(from, to, 0).scale - 1) < 1e-12);
    assert.ok(Math.abs(between(from, to, 1).scale - 4) < 1e-12);
    assert.equal(between(from, to, 1).x, 100);
  });
});
