import assert from "node:assert/strict";
import { boxesOverlap, boxWithin } from "../../../src/drawing/labels.js";
import { boxAt, freePlace } from "../../../src/drawing/scene/free-place.js";

const bounds = { left: 0, top: 0, right: 100, bottom: 100 };
const thing = { left: 40, top: 40, right: 60, bottom: 60 };
const size = { w: 10, h: 4 };

describe("a free place", () => {
  it("is the middle of the thing where it may stand over it", () => {
    assert.deepEqual(freePlace(thing, size, [], bounds, true), { x: 50, y: 50 });
  });

  it("is beside the thing where it may not, or where the middle is taken", () => {
    for (const [taken, over] of [
      [[], false],
      [[thing], true],
    ] as const) {
      const place = freePlace(thing, size, taken, bounds, over);
      assert.ok(place);
      assert.ok(!boxesOverlap(boxAt(place, size), thing));
      assert.ok(boxWithin(boxAt(place, size), bounds));
    }
  });

  it("keeps clear of everything taken, one after the other", () => {
    const taken = [thing];
    for (let i = 0; i < 20; i++) {
      const place = freePlace(thing, size, taken, bounds, false);
      assert.ok(place, `place ${i}`);
      const box = boxAt(place, size);
      assert.ok(taken.every((other) => !boxesOverlap(box, other)));
      taken.push(box);
    }
  });

  it("is none where there is no room", () => {
    assert.equal(freePlace(thing, { w: 200, h: 4 }, [], bounds, true), null);
    assert.equal(freePlace(thing, size, [bounds], bounds, true), null);
  });
});
