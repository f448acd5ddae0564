import assert from "node:assert/strict";
import { fraction, readMoney, readNumber, toWhole } from "../../src/measure/index.js";

/** Reads a number with its unit right behind it, as whole milligrams, mm³ or mm². */
function whole(text: string, kind: "mass" | "volume" | "area"): number | null {
  const reading = readNumber(text);
  assert.ok(reading.ok, text);
  return toWhole(reading.number, kind, reading.unit!.text);
}

describe("amounts of stock", () => {
  // NIST Handbook 44, Appendix C: lb = 453.59237 g, US fl oz = 29.573 529 562 5 ml, ft = 0.3048 m, all exact.
  it("convert exactly and round once", () => {
    assert.equal(whole("50lb", "mass"), 22_679_619); // 22,679,618.5 mg, halves away from zero
    assert.equal(whole("100lb", "mass"), 45_359_237);
    assert.equal(whole("16oz", "mass"), 453_592);
    assert.equal(whole("1600oz", "mass"), 45_359_237);
    assert.equal(whole("11.34kg", "mass"), 11_340_000);
    assert.equal(whole("250g", "mass"), 250_000);
    assert.equal(whole("10.1floz", "volume"), 298_693); // 298,692.648... mm³
    assert.equal(whole("300ml", "volume"), 300_000);
    assert.equal(whole("0.31l", "volume"), 310_000);
    assert.equal(whole("40sqft", "area"), 3_716_122); // 3,716,121.6 mm²
    assert.equal(whole("100sqft", "area"), 9_290_304);
    assert.equal(whole("3.7m2", "area"), 3_700_000);
  });

  it("of a published tube: 10.1 fl oz are 18.2 cubic inches (midwestsealantsupply.com/23823/24023.html)", () => {
    const cubicInches = whole("10.1floz", "volume")! / 25.4 ** 3;
    assert.equal(cubicInches.toFixed(1), "18.2");
  });

  it("have a place for their unit, whatever it is", () => {
    assert.deepEqual(readNumber("12 1/2stone"), {
      ok: true,
      number: fraction(25n, 2n),
      unit: { text: "stone", start: 6, end: 11 },
    });
    assert.deepEqual(readNumber("50"), { ok: true, number: fraction(50n), unit: null });
    assert.deepEqual(readNumber("40 ft"), {
      ok: true,
      number: fraction(40n),
      unit: { text: "ft", start: 3, end: 5 },
    });
  });

  it("say what is wrong with their number, and where", () => {
    assert.deepEqual(readNumber("1/0lb"), {
      ok: false,
      problem: {
        message: "found `1/0`, wanted a fraction over something other than zero",
        start: 0,
        end: 3,
      },
    });
    assert.equal(readNumber(`1' 6`).ok, false);
    assert.equal(readNumber(`${"9".repeat(31)}lb`).ok, false);
  });

  it("are none in a unit of another kind, or past any bag", () => {
    assert.equal(toWhole(fraction(1n), "mass", "floz"), null);
    assert.equal(toWhole(fraction(1n), "mass", "toString"), null);
    assert.equal(toWhole(fraction(1_000_000n), "mass", "kg"), 1_000_000_000_000);
    assert.equal(toWhole(fraction(1_000_001n), "mass", "kg"), null);
  });
});

describe("money", () => {
  it("is a decimal with two places at most", () => {
    assert.equal(readMoney("42.50"), 4_250);
    assert.equal(readMoney("0.85"), 85);
    assert.equal(readMoney("0.8"), 80);
    assert.equal(readMoney("31"), 3_100);
    for (const text of ["42.505", "1/2", "42.", ".5", "12in", "12 1/2", "9999999999"]) {
      assert.equal(readMoney(text), null, text);
    }
  });
});
