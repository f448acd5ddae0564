import assert from "node:assert/strict";
import {
  areaWords,
  massWords,
  moneyWords,
  percentWords,
  runWords,
  volumeWords,
} from "../../../src/sheets/purchases/amounts.js";
import { NM_PER } from "../../../src/measure/index.js";

const square = (side: number) => 2n * BigInt(side) ** 2n;

describe("amounts on a shopping list", () => {
  it("are areas to the hundredth, in square feet or square metres", () => {
    assert.equal(areaWords(square(2 * NM_PER.foot), "inch"), "4.00 sq ft");
    assert.equal(areaWords(square(NM_PER.m), "mm"), "1.00 m²");
    assert.equal(areaWords(square(100 * NM_PER.mm), "mm"), "0.01 m²");
    assert.equal(areaWords(0n, "foot"), "0.00 sq ft");
  });

  it("are volumes and masses in both systems where the plan is in inches", () => {
    // 1 cu in = 16.387064 ml and 1 lb = 0.45359237 kg (NIST Handbook 44, Appendix C).
    assert.equal(volumeWords(16_387_064, "inch"), "1000.0 cu in (16.39 l)");
    assert.equal(volumeWords(1_000_000, "mm"), "1.00 l");
    assert.equal(massWords(45_359_237, "inch"), "100.0 lb (45.36 kg)");
    assert.equal(massWords(1_500_000, "m"), "1.50 kg");
  });

  it("are long runs in feet, or in metres", () => {
    assert.equal(runWords(NM_PER.foot * 52 - NM_PER.inch / 16, "inch"), `51' 11 15/16"`);
    assert.equal(runWords(15_850 * NM_PER.mm, "mm"), "15.85 m");
  });

  it("are money with two places, without a sign that nobody named", () => {
    assert.equal(moneyWords(17_000), "170.00");
    assert.equal(moneyWords(5), "0.05");
  });

  it("are parts of a whole to the tenth of a percent", () => {
    assert.equal(percentWords(1n, 3n), "33.3 %");
    assert.equal(percentWords(2n, 3n), "66.7 %");
    assert.equal(percentWords(0n, 0n), "0.0 %");
  });
});
