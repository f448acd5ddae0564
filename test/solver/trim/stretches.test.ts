import assert from "node:assert/strict";
import { clearStretches } from "../../../src/solver/trim/stretches.js";

const box = (left: number, right: number) => ({ left, right });

describe("what of a stretch is clear of boxes", () => {
  it("is all of it without any, and nothing under one as wide", () => {
    assert.deepEqual(clearStretches({ from: 2, to: 9 }, []), [{ from: 2, to: 9 }]);
    assert.deepEqual(clearStretches({ from: 2, to: 9 }, [box(2, 9)]), []);
    assert.deepEqual(clearStretches({ from: 2, to: 9 }, [box(0, 5), box(4, 12)]), []);
  });

  it("is what lies before, between and behind them", () => {
    assert.deepEqual(clearStretches({ from: 0, to: 20 }, [box(12, 15), box(3, 5)]), [
      { from: 0, to: 3 },
      { from: 5, to: 12 },
      { from: 15, to: 20 },
    ]);
    assert.deepEqual(clearStretches({ from: 4, to: 20 }, [box(0, 6), box(18, 30)]), [
      { from: 6, to: 18 },
    ]);
    assert.deepEqual(clearStretches({ from: 0, to: 5 }, [box(8, 9)]), [{ from: 0, to: 5 }]);
  });
});
