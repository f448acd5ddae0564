import assert from "node:assert/strict";
import fc from "fast-check";
import { subtract } from "../../src/solver/clip/subtract.js";
import { ringOf } from "../../src/solver/index.js";
import { beyond, scribed, slopeOf, type Slope } from "../../src/solver/slope.js";

const box = { left: 10, bottom: 20, right: 110, top: 70 };

/** A slope through the box on any side, with corners between its ends. */
const anySlope = fc
  .record({
    side: fc.constantFrom("left", "right", "bottom", "top"),
    values: fc.array(fc.integer({ min: 0, max: 55 }), { minLength: 2, maxLength: 5 }),
  })
  .map(({ side, values }): Slope => {
    const last = values.length - 1;
    const isUpright = side === "left" || side === "right";
    const line = values.map((value, i) => {
      return isUpright
        ? ([10 + 2 * value, 20 + Math.round((50 * i) / last)] as const)
        : ([10 + Math.round((100 * i) / last), 15 + value] as const);
    });
    return { side: side, line };
  });

describe("a slope through a box", () => {
  it("scribes the box's bottom to a pan that rises", () => {
    const slope: Slope = {
      side: "bottom",
      line: [
        [10, 22],
        [110, 30],
      ],
    };
    assert.deepEqual(scribed(box, slope), [10, 22, 110, 30, 110, 70, 10, 70]);
  });

  it("leaves to the general cut what crosses the box's far side", () => {
    assert.equal(
      scribed(box, {
        side: "bottom",
        line: [
          [10, 22],
          [110, 70],
        ],
      }),
      null,
    );
    assert.equal(
      scribed(box, {
        side: "bottom",
        line: [
          [10, 19],
          [110, 30],
        ],
      }),
      null,
    );
  });

  it("scribes as the general cut does, on every side", () => {
    fc.assert(
      fc.property(anySlope, (slope) => {
        const outline = scribed(box, slope);
        if (!outline) return;
        const general = subtract({ outline: ringOf(box), holes: [] }, [beyond(box, slope)]);
        assert.deepEqual(
          general.map((shape) => shape.outline),
          [outline],
        );
      }),
      { numRuns: 1000 },
    );
  });

  it("is cut where its own line crosses, not where a line between rounded ends would", () => {
    // From (0, 0) up by 1 in 300: it crosses the box's bottom, 1 up, at 300 across.
    const chain = { at: [0, 30_000], value: [0, 100] };
    const low = { left: 100, bottom: 1, right: 700, top: 50 };
    const [shape] = subtract({ outline: ringOf(low), holes: [] }, [
      beyond(low, slopeOf("bottom", chain, low)),
    ]);
    assert.deepEqual(shape?.outline, [100, 1, 300, 1, 700, 2, 700, 50, 100, 50]);
  });
});
