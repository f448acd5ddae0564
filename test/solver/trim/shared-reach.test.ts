import assert from "node:assert/strict";
import { sharedReach } from "../../../src/solver/trim/shared-reach.js";

/** A strip that rises 1 on 2 from 0, 0 and is 10 high. */
const STRIP = [0, 0, 100, 50, 100, 60, 0, 10];

describe("what a strip and a box have in common", () => {
  it("reaches as far as the strip is in the box", () => {
    const box = { left: 20, bottom: 0, right: 90, top: 30 };
    // Its lower edge leaves the box at 30 up, at 60.
    assert.deepEqual(sharedReach(STRIP, box, 0), { from: 20, to: 60 });
    assert.deepEqual(sharedReach(STRIP, box, 1), { from: 10, to: 30 });
  });

  it("is nothing where they only touch, or are apart", () => {
    assert.equal(sharedReach(STRIP, { left: 20, bottom: -30, right: 90, top: 10 }, 0), null);
    assert.equal(sharedReach(STRIP, { left: 20, bottom: -30, right: 90, top: 0 }, 0), null);
  });

  it("is rounded outwards", () => {
    const box = { left: 20, bottom: 0, right: 90, top: 31 };
    assert.deepEqual(sharedReach([0, 0, 90, 30, 90, 40, 0, 10], box, 1), { from: 6, to: 31 });
  });
});
