import assert from "node:assert/strict";
import { WeighPlaces, type Way } from "../../../src/solver/room/weigh-places.js";
import { fieldsOn, INCH, MOVING } from "./small-room.js";

const fields = fieldsOn(MOVING, "across full tile from left", "prefer {\n few cuts\n}\n");
const base = fields.base(fields.drawn.stop).fields;
const wayAt = (x: number): Way => {
  const at = { x: x * INCH, y: 13 * INCH };
  return { i: 0, at, box: fields.boxAt(0, at), missed: [], kind: null };
};
const weighed = (x: number, bar: readonly number[] | null = null) =>
  new WeighPlaces(fields).weigh([wayAt(x)], base, { x: 0, y: 0, first: 0 }, bar);

describe("the weighing of places", () => {
  it("counts what an opening changes by hand, the wish for few cuts before the rest", () => {
    // On the joints: four slivers of 1 in under it, four pieces of 3 in over it; four tiles go.
    assert.deepEqual(weighed(12), [0, 8, 4, 0, 0, 8, -4, 0]);
    // 1 in further: three and three, a cut at either side in the course beside it, four corners that count twice.
    assert.deepEqual(weighed(13), [0, 16, 4, 0, 0, 16, -3, 0]);
  });

  it("stops where it costs more than a bar", () => {
    assert.deepEqual(weighed(12, weighed(12)), weighed(12));
    assert.equal(weighed(13, weighed(12)), null);
  });

  it("knows what an opening adds at least wherever it stands: of 8 in, none need be cut", () => {
    assert.deepEqual(new WeighPlaces(fields).leastOf(0), [0, 0, 0, 0, 0, 0, 0, 0]);
  });
});
