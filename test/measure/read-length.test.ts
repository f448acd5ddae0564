import assert from "node:assert/strict";
import fc from "fast-check";
import type { Unit } from "../../src/measure/index.js";
import { readLength, readQuantity } from "../../src/measure/index.js";

const INCH = 25_400_000;

function nm(text: string, unit: Unit = "inch"): number {
  const reading = readLength(text, unit);
  assert.ok(reading.ok, reading.ok ? "" : reading.problem.message);
  return reading.nm;
}

/** The message, and the part of the literal that it speaks of. */
function problem(text: string): string {
  const reading = readLength(text, "inch");
  assert.ok(!reading.ok, text);
  const { message, start, end } = reading.problem;
  return `${message} [${text.slice(start, end)}]`;
}

describe("reading a length", () => {
  const inches: Record<string, number> = {
    "5 7/8": 5.875,
    "5-7/8": 5.875,
    "5  7/8": 5.875,
    "7/8": 0.875,
    "9/8": 1.125,
    "2.5": 2.5,
    ".5": 0.5,
    "18": 18,
    '18"': 18,
    "18in": 18,
    "18 in": 18,
    "5 7/8 in": 5.875,
    "6ft": 72,
    "6'": 72,
    "6ft 2in": 74,
    "6ft2in": 74,
    [`1' 6 1/2"`]: 18.5,
    [`1'6"`]: 18,
    [`1'-6 1/2"`]: 18.5,
    [`1' 11.5"`]: 23.5,
    "1.5ft": 18,
  };
  for (const [text, wanted] of Object.entries(inches)) {
    it(`takes ${text} for ${wanted} in`, () => assert.equal(nm(text), wanted * INCH));
  }

  const millimetres: Record<string, number> = {
    "300mm": 300,
    "30cm": 300,
    "1.2m": 1200,
    "0.1 mm": 0.1,
  };
  for (const [text, wanted] of Object.entries(millimetres)) {
    it(`takes ${text} for ${wanted} mm`, () => assert.equal(nm(text), wanted * 1_000_000));
  }

  it("takes a bare number for the file's unit", () => {
    assert.equal(nm("2.5", "inch"), 63_500_000);
    assert.equal(nm("2.5", "mm"), 2_500_000);
    assert.equal(nm("2.5", "cm"), 25_000_000);
    assert.equal(nm("2.5", "m"), 2_500_000_000);
    assert.equal(nm("2.5", "foot"), 762_000_000);
  });

  it("rounds a third of an inch once, to the nearest nanometre", () => {
    assert.equal(nm("1/3"), 8_466_667);
    assert.equal(nm("2/3"), 16_933_333);
  });

  it("reads decimals by their digits, past what a double holds", () => {
    assert.equal(nm("0.1234567890123456789", "m"), 123_456_789);
    assert.equal(nm("9999.999999999", "m"), 9_999_999_999_999);
  });

  const problems: Record<string, string> = {
    "5 8/7": "found `8/7` after a whole number, wanted a fraction under one [8/7]",
    "5 8/8": "found `8/8` after a whole number, wanted a fraction under one [8/8]",
    [`1' 14"`]: 'found `14` inches after feet, wanted less than 12 [14"]',
    [`1' 12"`]: 'found `12` inches after feet, wanted less than 12 [12"]',
    "1' 6": "found `6` after feet, wanted inches with their mark, as in 1' 6\" [6]",
    "6ft 30cm": "found `30cm` after feet, wanted inches with their mark, as in 1' 6\" [30cm]",
    [`1.5' 3"`]: "found `1.5'` before inches, wanted whole feet, as in 1' 6 1/2\" [1.5]",
    "3 3/0": "found `3/0`, wanted a fraction over something other than zero [3/0]",
    "1/0": "found `1/0`, wanted a fraction over something other than zero [1/0]",
    "1./16":
      "found `1./16`, wanted a fraction of whole numbers (a division has spaces round its slash) [1./16]",
    "2.5/16":
      "found `2.5/16`, wanted a fraction of whole numbers (a division has spaces round its slash) [2.5/16]",
    "2.5 1/2": "found `2.5` before a fraction, wanted a whole number [2.5]",
    "2.": "found `2.`, wanted digits after the point [2.]",
    "18furlong": "found the unit `furlong`, wanted in, ft, mm, cm or m [furlong]",
    "18MM": "found the unit `MM`, wanted in, ft, mm, cm or m; did you mean `mm`? [MM]",
    "18constructor": "found the unit `constructor`, wanted in, ft, mm, cm or m [constructor]",
    "10001m": "found `10001m`, wanted a length of at most 10 km [10001m]",
    lath: "found `lath`, wanted a length such as 5 7/8, 2.5 or 300mm [lath]",
    "": "found ``, wanted a length such as 5 7/8, 2.5 or 300mm []",
  };
  for (const [text, wanted] of Object.entries(problems)) {
    it(`explains ${JSON.stringify(text)}`, () => assert.equal(problem(text), wanted));
  }

  it("never throws, whatever it is given", () => {
    const parts = fc.constantFrom(..."0159./'-\" \tx".split(""), "in", "ft", "m");
    const texts = fc.array(parts, { maxLength: 12 }).map((chosen) => chosen.join(""));
    fc.assert(
      fc.property(texts, (text) => {
        const reading = readLength(text, "inch");
        if (reading.ok) assert.ok(Number.isSafeInteger(reading.nm) && reading.nm >= 0);
        else
          assert.ok(
            reading.problem.start <= reading.problem.end && reading.problem.end <= text.length,
          );
      }),
      { numRuns: 5000 },
    );
  });

  it("takes 10 km and explains one nanometre more", () => {
    assert.equal(nm("10000m"), 10 ** 13);
    assert.match(problem("10000.000000001m"), /wanted a length of at most 10 km/);
  });

  it("explains an absurd row of digits without computing it", () => {
    assert.match(problem("9".repeat(100_000)), /found a number of 100000 digits/);
  });

  it("keeps an unrounded amount and its unit for sums", () => {
    assert.deepEqual(readQuantity("1/3"), {
      ok: true,
      quantity: { amount: { numerator: 1n, denominator: 3n }, unit: null },
    });
  });
});
