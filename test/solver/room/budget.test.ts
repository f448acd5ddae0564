import assert from "node:assert/strict";
import { shareOf } from "../../../src/solver/room/budget.js";

describe("a wall's share of what a room is weighed with", () => {
  it("is as much as any other's, in whole numbers", () => {
    assert.equal(shareOf(8000, 1), 8000);
    assert.equal(shareOf(8000, 3), 2666);
  });

  it("is enough to find something with, however many walls there are", () => {
    assert.equal(shareOf(8000, 125), 64);
    assert.equal(shareOf(8000, 100_000), 64);
  });
});
