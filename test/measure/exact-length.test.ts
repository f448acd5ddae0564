import assert from "node:assert/strict";
import fc from "fast-check";
import type { Unit } from "../../src/measure/index.js";
import { exactLength, LONGEST, readLength } from "../../src/measure/index.js";

const UNITS: Unit[] = ["inch", "mm", "cm", "m", "foot"];

describe("a length written into a plan", () => {
  const written: [number, Unit, string][] = [
    [0, "inch", "0"],
    [149_225_000, "inch", "5 7/8"],
    [396_875, "inch", "1/64"],
    [254_000, "inch", "0.01"],
    [127, "inch", "0.000005"],
    [1, "inch", "0.000001mm"],
    [-4_762_500, "inch", "-3/16"],
    [304_800_000, "foot", "1"],
    [1_612_900_000, "foot", `5' 3 1/2"`],
    [76_200_000, "foot", `3"`],
    [1, "foot", "0.000001mm"],
    [149_225_001, "mm", "149.225001"],
    [149_225_001, "cm", "14.9225001"],
    [149_225_001, "m", "0.149225001"],
  ];
  for (const [nm, unit, wanted] of written) {
    it(`writes ${nm} nm in ${unit} as ${wanted}`, () =>
      assert.equal(exactLength(nm, unit), wanted));
  }

  it("reads back as the same nanometres, in every unit and of any size", () => {
    const sizes = fc.oneof(
      fc.integer({ min: -LONGEST, max: LONGEST }),
      fc.integer({ min: 0, max: 10 ** 7 }).map((n) => n * 396_875),
      fc.integer({ min: 0, max: 10 ** 7 }).map((n) => n * 127),
    );
    fc.assert(
      fc.property(sizes, fc.constantFrom(...UNITS), (nm, unit) => {
        const text = exactLength(nm, unit);
        const reading = readLength(text.replace("-", ""), unit);
        assert.deepEqual(reading, { ok: true, nm: Math.abs(nm) });
        assert.equal(text.startsWith("-"), nm < 0);
      }),
      { numRuns: 2000 },
    );
  });
});
