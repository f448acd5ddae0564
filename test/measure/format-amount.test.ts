import assert from "node:assert/strict";
import { formatAmount, formatMoney } from "../../src/measure/index.js";

describe("amounts for people", () => {
  it("are in the units of those who measure in inches", () => {
    assert.equal(formatAmount(11_339_809, "mass", "inch"), "25 lb");
    assert.equal(formatAmount(298_693, "volume", "foot"), "10.1 fl oz");
    assert.equal(formatAmount(3_716_122, "area", "inch"), "40 sq ft");
    assert.equal(formatAmount(4_180_637, "area", "inch"), "45 sq ft");
  });

  it("are in metric ones for the others", () => {
    assert.equal(formatAmount(11_339_809, "mass", "mm"), "11.34 kg");
    assert.equal(formatAmount(300_000, "volume", "cm"), "0.3 l");
    assert.equal(formatAmount(3_716_122n, "area", "m"), "3.72 m²");
    assert.equal(formatAmount(0, "area", "m"), "0 m²");
  });

  it("have money with both its places", () => {
    assert.equal(formatMoney(4_250), "42.50");
    assert.equal(formatMoney(85), "0.85");
    assert.equal(formatMoney(0), "0.00");
  });
});
