import assert from "node:assert/strict";
import fc from "fast-check";
import { squareMillimetres } from "../../src/sheets/area.js";

describe("squareMillimetres", () => {
  it("writes whole square millimetres without decimals", () => {
    assert.equal(squareMillimetres(0n), "0");
    assert.equal(squareMillimetres(2n * 10n ** 12n), "1");
  });

  it("writes every decimal down to half a square nanometre", () => {
    assert.equal(squareMillimetres(1n), "0.0000000000005");
    assert.equal(squareMillimetres(3n * 10n ** 12n), "1.5");
    assert.equal(squareMillimetres(-3n * 10n ** 12n), "-1.5");
  });

  it("writes what reads back to the same area", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 26n }), (doubled) => {
        const [whole, decimals = ""] = squareMillimetres(doubled).split(".");
        assert.equal(BigInt(whole! + decimals.padEnd(13, "0")) / 5n, doubled);
        assert.ok(!decimals.endsWith("0"));
      }),
    );
  });
});
