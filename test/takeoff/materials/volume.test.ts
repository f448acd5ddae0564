import assert from "node:assert/strict";
import { ceilDivide, volumeOf } from "../../../src/takeoff/materials/volume.js";

const MM = 1_000_000;
/** Twice a square millimetre in nm². */
const SQUARE_MM = 2n * BigInt(MM) ** 2n;

describe("a volume", () => {
  it("is whole mm³, rounded up once over all its layers", () => {
    assert.equal(volumeOf([]), 0);
    assert.equal(volumeOf([{ doubleArea: 10n * SQUARE_MM, thickness: 3 * MM }]), 30);
    const third = { doubleArea: SQUARE_MM, thickness: MM / 4 };
    assert.equal(volumeOf([third]), 1);
    assert.equal(volumeOf([third, third, third, third]), 1);
    assert.equal(volumeOf([third, third, third, third, { doubleArea: 1n, thickness: 1 }]), 2);
  });

  it("is exact where numbers no longer are", () => {
    assert.equal(ceilDivide(10n ** 30n + 1n, 10n ** 15n), 10n ** 15n + 1n);
    assert.equal(ceilDivide(10n ** 30n, 10n ** 15n), 10n ** 15n);
  });
});
