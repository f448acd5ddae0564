import assert from "node:assert/strict";
import { compareCosts, isOver, lessBy, lesserOf, sumOf } from "../../../src/solver/room/cost.js";

describe("costs", () => {
  it("are compared from the first number", () => {
    assert.ok(compareCosts([0, 5, 9], [0, 6, 0]) < 0);
    assert.ok(compareCosts([1, 0, 0], [0, 9, 9]) > 0);
    assert.equal(compareCosts([1, 2], [1, 2]), 0);
  });

  it("add up, and taken from one another come back", () => {
    assert.deepEqual(sumOf([1, 2], [3, 4]), [4, 6]);
    assert.deepEqual(lessBy([4, 6], [3, 4]), [1, 2]);
  });

  it("have a lesser of two, or of one", () => {
    assert.deepEqual(lesserOf([0, 5], [0, 6]), [0, 5]);
    assert.deepEqual(lesserOf([1, 0], [0, 6]), [0, 6]);
    assert.deepEqual(
      [lesserOf([1], null), lesserOf(null, [1]), lesserOf(null, null)],
      [[1], [1], null],
    );
  });

  it("are over a third where their sum is", () => {
    assert.equal(isOver([1, 5], [1, 0], [2, 4]), true);
    assert.equal(isOver([1, 4], [1, 0], [2, 4]), false);
    assert.equal(isOver([0, 9], [1, 9], [2, 0]), false);
  });
});
