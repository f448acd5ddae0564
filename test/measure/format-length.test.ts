import assert from "node:assert/strict";
import fc from "fast-check";
import type { Unit } from "../../src/measure/index.js";
import { formatLength, NM_PER } from "../../src/measure/index.js";
import { mixedNumber } from "../../src/measure/format-length.js";

describe("a length for people", () => {
  const shown: [number, Unit, string][] = [
    [0, "inch", "0 in"],
    [149_225_000, "inch", "5 7/8 in"],
    [149_225_001, "inch", "5 7/8+ in"],
    [149_224_999, "inch", "5 7/8- in"],
    [-4_762_500, "inch", "-3/16 in"],
    [-4_762_501, "inch", "-3/16+ in"],
    [NM_PER.inch, "inch", "1 in"],
    [1, "inch", "0+ in"],
    [-1, "inch", "0+ in"],
    [396_874, "inch", "0+ in"],
    [396_875, "inch", "1/32- in"],
    [1_612_900_000, "foot", `5' 3 1/2"`],
    [304_800_000, "foot", "1'"],
    [304_800_001, "foot", `1' 0+"`],
    [304_799_999, "foot", `1' 0-"`],
    [76_200_000, "foot", `3"`],
    [-1_612_900_000, "foot", `-5' 3 1/2"`],
    [149_225_000, "mm", "149.2 mm"],
    [150_000_000, "mm", "150 mm"],
    [-49_999, "mm", "0 mm"],
    [-50_000, "mm", "-0.1 mm"],
    [149_250_000, "cm", "14.93 cm"],
    [300_000_000, "cm", "30 cm"],
    [1_524_000_000, "m", "1.524 m"],
    [1_500_000, "m", "0.0015 m"],
  ];
  for (const [nm, unit, wanted] of shown) {
    it(`shows ${nm} nm in ${unit} as ${wanted}`, () =>
      assert.equal(formatLength(nm, unit), wanted));
  }

  it("shows a mark exactly where inches were rounded", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 ** 12 }), (nm) => {
        const exact = nm % 793_750 === 0;
        assert.equal(/[+-] in$/.test(formatLength(nm, "inch")), !exact);
      }),
    );
  });

  it("reduces fractions", () => {
    assert.deepEqual(
      [0, 16, 32, 33, 6].map((n) => mixedNumber(n, 32)),
      ["0", "1/2", "1", "1 1/32", "3/16"],
    );
  });
});
