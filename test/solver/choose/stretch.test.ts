import assert from "node:assert/strict";
import { Stretch } from "../../../src/solver/choose/stretch.js";

/** Starts cost as many nanometres of balance as they are from 40, and a sliver under 10. */
const bounding = {
  even: ({ from, to }: { from: number; to: number }) => ({
    slivers: from < 10 ? 1 : 0,
    underHalf: 0,
    imbalance: Math.max(0, from - 40, 40 - to),
  }),
  scribed: () => ({ slivers: 2, underHalf: 0 }),
};

function leaves(stretch: Stretch): Stretch[] {
  return stretch.isOneStart ? [stretch] : stretch.halves.flatMap(leaves);
}

describe("a stretch of starts", () => {
  const all = Stretch.all([0, 10, 11, 30], 50, bounding);

  it("has each start of a module once", () => {
    assert.deepEqual(
      leaves(all).map(({ from }) => from),
      Array.from({ length: 50 }, (_, i) => i),
    );
  });

  it("costs no more than any of its starts, and what is scribed besides", () => {
    const check = (stretch: Stretch) => {
      for (const { bound, imbalance } of leaves(stretch)) {
        assert.ok(stretch.bound.slivers <= bound.slivers);
        assert.ok(stretch.imbalance <= imbalance);
        assert.ok(bound.slivers >= 2);
      }
      if (!stretch.isOneStart) stretch.halves.forEach(check);
    };
    check(all);
  });

  it("is parted at critical starts first", () => {
    assert.ok(all.hasCritical);
    const [low, high] = all.halves;
    assert.deepEqual([low.to, high.from], [10, 11]);
    assert.ok(!Stretch.at(7, bounding).hasCritical);
  });

  it("tells its least balance even where another start has fewer slivers", () => {
    const even = ({ from }: { from: number }) => ({
      ...bounding.even({ from, to: from }),
      imbalance: from,
    });
    const stretch = Stretch.all([0, 10], 20, { ...bounding, even });
    assert.deepEqual(stretch.bound, { slivers: 2, underHalf: 0, imbalance: 10 });
    assert.equal(stretch.imbalance, 0);
  });
});
