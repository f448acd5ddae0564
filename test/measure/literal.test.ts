import assert from "node:assert/strict";
import { LENGTH_LITERAL } from "../../src/measure/index.js";
import { LITERAL_PARTS } from "../../src/measure/literal.js";

function literalIn(text: string): string | undefined {
  return LENGTH_LITERAL.exec(text)?.[0];
}

describe("a length literal", () => {
  for (const literal of ["5 7/8", "5-7/8", `1' 6 1/2"`, "6ft 2in", "18 in", "18furlong", "5 8/7"]) {
    it(`is taken whole: ${literal}`, () => assert.equal(literalIn(`${literal}, 4`), literal));
  }

  it("ends before an x that stands between two lengths", () => {
    assert.equal(literalIn("60x96"), "60");
    assert.equal(literalIn("5 7/8x2 7/8"), "5 7/8");
    assert.equal(literalIn("60 x 96"), "60");
  });

  it("ends before a subtraction with spaces", () => {
    assert.equal(literalIn("5 - 7/8"), "5");
    assert.equal(literalIn("5 -7/8"), "5");
  });

  it("leaves a division with spaces alone", () => {
    assert.equal(literalIn("7 / 8"), "7");
  });

  it("takes a time in proportion to its length", () => {
    const text = `${"9".repeat(300_000)}!`;
    const before = process.cpuUsage();
    literalIn(text);
    LITERAL_PARTS.exec(text);
    assert.ok(process.cpuUsage(before).user < 1_000_000);
  });
});
