import assert from "node:assert/strict";
import { circleMeets, circleRing, ringNear } from "../../../src/solver/clip/circle.js";
import { subtract } from "../../../src/solver/clip/subtract.js";
import { boundsOf, doubleArea, ringOf } from "../../../src/solver/index.js";

const circle = { left: 0, bottom: 0, right: 1_000_000, top: 1_000_000 };

describe("a round hole", () => {
  it("touches every side of its box and is the same turned or mirrored", () => {
    const ring = circleRing(circle);
    assert.deepEqual(boundsOf(ring), circle);
    const corners = new Set<string>();
    for (let i = 0; i < ring.length; i += 2) corners.add(`${ring[i]},${ring[i + 1]}`);
    for (let i = 0; i < ring.length; i += 2) {
      assert.ok(corners.has(`${1_000_000 - ring[i]!},${ring[i + 1]}`));
      assert.ok(corners.has(`${1_000_000 - ring[i + 1]!},${ring[i]}`));
    }
  });

  it("has the area of its 96-cornered polygon: n/2 r2 sin(2 pi / n)", () => {
    const area = Number(doubleArea(circleRing(circle))) / 2;
    const polygon = 48 * 500_000 ** 2 * Math.sin((2 * Math.PI) / 96);
    // Each corner is off by less than a nanometre, so the area by less than the perimeter.
    assert.ok(Math.abs(area - polygon) < Math.PI * 1_000_000);
  });

  it("meets a tile only where the circle itself reaches it", () => {
    const tile = (left: number, bottom: number) => ({
      left,
      bottom,
      right: left + 10,
      top: bottom + 10,
    });
    assert.equal(circleMeets(circle, tile(-10, 500_000)), false);
    assert.equal(circleMeets(circle, tile(-9, 499_995)), true);
    // A corner of the box that the circle does not reach: at 45 degrees its rim is 146,447 nm in.
    assert.equal(circleMeets(circle, tile(146_436, 146_436)), false);
    assert.equal(circleMeets(circle, tile(146_438, 146_438)), true);
  });

  it("takes the same from a tile by the few corners near it", () => {
    const ring = circleRing(circle);
    for (const left of [-300_000, 0, 120_000, 480_000, 900_000]) {
      const tile = { left, bottom: 600_000, right: left + 400_000, top: 1_200_000 };
      const subject = { outline: ringOf(tile), holes: [] };
      const near = ringNear(ring, tile);
      assert.ok(near.length < ring.length);
      assert.deepEqual(subtract(subject, [near]), subtract(subject, [ring]));
    }
  });
});
