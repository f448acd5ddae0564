import assert from "node:assert/strict";
import { splitRun } from "../../../src/solver/trim/split-run.js";

const lengths = (length: number) => splitRun(length, 60, 2).map(({ from, to }) => to - from);

describe("splitRun", () => {
  it("cuts one piece to a run that is shorter than the trim", () => {
    assert.deepEqual(lengths(40), [40]);
    assert.deepEqual(lengths(60), [60]);
  });

  it("centres on a joint where that leaves the longer ends", () => {
    assert.deepEqual(lengths(100), [49, 49]);
  });

  it("centres on a piece where that leaves the longer ends", () => {
    assert.deepEqual(lengths(160), [48, 60, 48]);
  });

  it("lays whole lengths where they just fit", () => {
    assert.deepEqual(lengths(122), [60, 60]);
    assert.deepEqual(lengths(184), [60, 60, 60]);
  });

  it("never closes a run with a joint", () => {
    for (let length = 1; length < 400; length++) {
      const stretches = splitRun(length, 60, 2);
      assert.equal(stretches[0]!.from, 0);
      assert.equal(stretches.at(-1)!.to, length);
    }
  });

  it("lays nothing but what fits where a joint is wider than the run", () => {
    assert.deepEqual(
      splitRun(100, 60, 200).map(({ from, to }) => [from, to]),
      [[20, 80]],
    );
  });
});
