import assert from "node:assert/strict";
import { PAPER_SIZES, POINTS_PER_MM } from "../../../src/sheets/print/paper-size.js";

describe("paper sizes", () => {
  it("are 8 1/2 x 11 in for letter (ANSI/ASME Y14.1)", () => {
    assert.deepEqual(PAPER_SIZES.letter, { width: 8.5 * 72, height: 11 * 72 });
  });

  it("are 210 x 297 mm for A4 (ISO 216), to the thousandth of a point", () => {
    const { width, height } = PAPER_SIZES.a4;
    assert.equal(Math.round(width * 1000), Math.round(210 * POINTS_PER_MM * 1000));
    assert.equal(Math.round(height * 1000), Math.round(297 * POINTS_PER_MM * 1000));
  });
});
