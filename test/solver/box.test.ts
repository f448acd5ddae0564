import assert from "node:assert/strict";
import { grown, overlaps } from "../../src/solver/index.js";
import { shared } from "../../src/solver/box.js";

const box = { left: 0, bottom: 0, right: 10, top: 20 };

describe("a box", () => {
  it("grows by the same on every side", () => {
    assert.deepEqual(grown(box, 3), { left: -3, bottom: -3, right: 13, top: 23 });
  });

  it("overlaps another only when they share more than an edge", () => {
    assert.equal(overlaps(box, { left: 9, bottom: 19, right: 30, top: 30 }), true);
    assert.equal(overlaps(box, { left: 10, bottom: 0, right: 30, top: 30 }), false);
  });

  it("shares with another what lies in both", () => {
    assert.deepEqual(shared(box, { left: 4, bottom: -5, right: 30, top: 6 }), {
      left: 4,
      bottom: 0,
      right: 10,
      top: 6,
    });
  });
});
