import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

const bottom = (readings: string): string => `  bottom pan measured ${readings}`;

function toldOf(line: string): string[] {
  return told(wallText(line));
}

describe("readings along a side", () => {
  it("are kept in order, as lengths", () => {
    assert.deepEqual(wallOf(bottom("0: 0, 30: -3/16, 60: 1/8")).edges.bottom.measured, [
      { at: 0, off: 0 },
      { at: 30 * INCH, off: -4_762_500 },
      { at: 60 * INCH, off: 3_175_000 },
    ]);
  });

  it("that are out of order are told and left out", () => {
    const line = bottom("0: 0, 40: 1, 30: 2, 50: 3");
    assert.deepEqual(toldOf(line), [
      "plan/reading-order [30] found a reading at 30 in after one at 40 in, wanted them in order",
    ]);
    assert.deepEqual(
      wallOf(line).edges.bottom.measured.map(({ at }) => at / INCH),
      [0, 40, 50],
    );
  });

  it("that are two at one place are told", () => {
    assert.deepEqual(toldOf(bottom("30: 0, 30: 0")), [
      "plan/reading-order [30] found a second reading at 30 in, wanted one for each place",
    ]);
  });

  it("may be at both ends of the side but not beyond", () => {
    assert.deepEqual(toldOf(bottom("0: 0, 60: 0")), []);
    assert.deepEqual(toldOf("  left wall measured 0: 0, 96: 0"), []);
    assert.deepEqual(toldOf(bottom("60 1/64: 0")), [
      "plan/reading-beyond [60 1/64] found a reading at 60 1/32- in, wanted one between 0 and the side's length, 60 in",
    ]);
    assert.deepEqual(toldOf("  left wall measured -1: 0, 97: 0").length, 2);
  });

  it("stay under half of the wall, so that two sides can't meet", () => {
    assert.deepEqual(toldOf(bottom("0: 47 31/32")), []);
    assert.deepEqual(toldOf(bottom("0: 48")), [
      "plan/reading-large [48] found a side 48 in off, wanted less than half of the wall's 96 in",
    ]);
    assert.deepEqual(toldOf("  left wall measured 0: -30").length, 1);
  });
});
