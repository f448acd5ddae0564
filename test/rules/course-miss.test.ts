import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { twiceMiss } from "../../src/rules/course-miss.js";
import { cornersOf, cornerText, type CornerText } from "./corner-text.js";

const INCH = NM_PER.inch;

/** Twice how far the side wall's bed joints are over the back wall's, in inches. */
function miss(parts: CornerText): number | null {
  const [corner] = cornersOf(cornerText(parts));
  const twice = twiceMiss(corner!.over.lay, corner!.under.lay);
  return twice === null ? null : twice / INCH;
}

describe("how courses miss each other", () => {
  it("is told the shorter way, up or down, whole courses left out", () => {
    const up = "joint at 10";
    assert.equal(miss({ up, side: { up: "joint at 10 1/4" } }), 0.5);
    assert.equal(miss({ up, side: { up: "joint at 9 3/4" } }), -0.5);
    assert.equal(miss({ up, side: { up: "joint at 10 + 5 * 3 1/16 - 1/4" } }), -0.5);
    // Half a course off, up and down are the same way.
    assert.equal(miss({ up, side: { up: "joint at 10 + 1 17/32" } }), 3.0625);
  });

  it("is nothing where the joints' middles meet, whatever their widths and modules", () => {
    const up = "joint at 10";
    assert.equal(miss({ up }), 0);
    // 2 15/16 and a joint of 1/8 are the module of 3 and 1/16.
    assert.equal(miss({ up, side: { tile: "low", joint: "1/8" } }), 0);
    // 6 1/16 and a joint of 1/16 are two modules of 3 1/16.
    assert.equal(miss({ up, side: { tile: "tall" } }), 0);
    assert.equal(miss({ up, side: { tile: "tall", up: "joint at 10 + 3 1/16" } }), 0);
  });

  it("can't be told where neither module is a whole multiple of the other", () => {
    assert.equal(miss({ side: { tile: "odd" } }), null);
  });
});
