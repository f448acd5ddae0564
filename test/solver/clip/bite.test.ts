import assert from "node:assert/strict";
import fc from "fast-check";
import { lessBox, lessCircle } from "../../../src/solver/clip/bite.js";
import { circleRing } from "../../../src/solver/clip/circle.js";
import { subtract } from "../../../src/solver/clip/subtract.js";
import type { Box, Ring, Shape } from "../../../src/solver/index.js";
import { boxRing } from "../../support/clipping.js";

const TILE: Box = { left: 0, bottom: 0, right: 100, top: 50 };

function box(left: number, bottom: number, right: number, top: number): Box {
  return { left, bottom, right, top };
}

function bySubtracting(ring: Ring, from = TILE): Shape[] {
  return subtract({ outline: boxRing(from), holes: [] }, [ring]);
}

describe("a box less a rectangle", () => {
  it("is an L at each corner, a U at each side, and has a hole within: as by the graph of edges", () => {
    const across = [-5, 0, 30, 60, 100, 105] as const;
    const up = [-5, 0, 20, 35, 50, 55] as const;
    const counted = { one: 0, other: 0 };
    for (const left of across)
      for (const right of across)
        for (const bottom of up)
          for (const top of up) {
            if (left >= right || bottom >= top || left >= 100 || right <= 0) continue;
            if (bottom >= 50 || top <= 0) continue;
            const bite = box(left, bottom, right, top);
            const wanted = bySubtracting(boxRing(bite));
            const made = lessBox(TILE, bite);
            if (made) counted.one++;
            else counted.other++;
            // Where one direction is spanned, nothing or a straight cut or two parts are left: not a bite.
            const spans = (left <= 0 && right >= 100) || (bottom <= 0 && top >= 50);
            assert.deepEqual(made, spans ? null : wanted[0], JSON.stringify(bite));
            if (!spans) assert.equal(wanted.length, 1);
          }
    assert.ok(counted.one > 50 && counted.other > 20);
  });
});

describe("a box less a circle", () => {
  it("has the hole that the graph of edges makes, however large or small it is", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900_000 }),
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 1_000_000 }),
        (radius, left, bottom) => {
          const circle = box(left, bottom, left + 2 * radius, bottom + 2 * radius);
          const from = box(0, 0, 3_000_000, 3_000_000);
          const made = lessCircle(from, circle);
          const [wanted] = bySubtracting(circleRing(circle), from);
          assert.deepEqual(made ?? "of no area", wanted!.holes.length > 0 ? wanted : "of no area");
        },
      ),
      { numRuns: 300 },
    );
  });

  it("is none where the circle meets the box's edge", () => {
    assert.equal(lessCircle(TILE, box(0, 10, 20, 30)), null);
    assert.equal(lessCircle(TILE, box(50, 40, 70, 60)), null);
  });
});
