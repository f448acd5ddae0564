import assert from "node:assert/strict";
import { OpenPlaces } from "../../../src/takeoff/tiles/open-places.js";
import { randomFrom } from "../../support/random.js";

describe("open places", () => {
  it("are none at first", () => {
    const open = new OpenPlaces(5);
    assert.equal(open.before(5), null);
    assert.equal(open.from(0), null);
    assert.equal(new OpenPlaces(0).from(0), null);
  });

  it("are found on both sides of any place", () => {
    const open = new OpenPlaces(10);
    open.open(2);
    open.open(7);
    assert.deepEqual([open.before(2), open.from(2)], [null, 2]);
    assert.deepEqual([open.before(3), open.from(3)], [2, 7]);
    assert.deepEqual([open.before(8), open.from(8)], [7, null]);
    open.close(7);
    assert.deepEqual([open.before(8), open.from(3)], [2, null]);
  });

  it("are those that a plain search finds, however they are opened and closed", () => {
    const random = randomFrom(5);
    for (const size of [1, 2, 3, 7, 8, 9, 100]) {
      const open = new OpenPlaces(size);
      const plain = new Set<number>();
      for (let step = 0; step < 300; step++) {
        const place = random.integer(0, size - 1);
        if (plain.delete(place)) open.close(place);
        else {
          plain.add(place);
          open.open(place);
        }
        const at = random.integer(0, size);
        const sorted = [...plain].sort((a, b) => a - b);
        assert.equal(open.before(at), sorted.filter((other) => other < at).at(-1) ?? null);
        assert.equal(open.from(at), sorted.find((other) => other >= at) ?? null);
      }
    }
  });
});
