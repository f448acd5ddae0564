import assert from "node:assert/strict";
import fc from "fast-check";
import {
  add,
  divide,
  fraction,
  isUnwieldy,
  multiply,
  roundToWhole,
  subtract,
} from "../../src/measure/index.js";

const term = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
const any = fc
  .tuple(
    term,
    term.filter((n) => n !== 0n),
  )
  .map(([numerator, denominator]) => fraction(numerator, denominator));

describe("a fraction", () => {
  it("is in lowest terms over a positive denominator", () => {
    assert.deepEqual(fraction(6n, -8n), { numerator: -3n, denominator: 4n });
  });

  it("comes back from what undoes its sum", () => {
    fc.assert(fc.property(any, any, (a, b) => assert.deepEqual(subtract(add(a, b), b), a)));
  });

  it("comes back from what undoes its product", () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        if (b.numerator !== 0n) assert.deepEqual(divide(multiply(a, b), b), a);
      }),
    );
  });

  it("rounds halves away from zero", () => {
    const rounded = [fraction(5n, 2n), fraction(-5n, 2n), fraction(7n, 3n), fraction(-7n, 3n)];
    assert.deepEqual(rounded.map(roundToWhole), [3n, -3n, 2n, -2n]);
  });

  it("is unwieldy past 256 bits", () => {
    assert.equal(isUnwieldy(fraction(1n << 256n)), false);
    assert.equal(isUnwieldy(fraction((1n << 256n) + 1n)), true);
    assert.equal(isUnwieldy(fraction(1n, (1n << 256n) + 1n)), true);
  });
});
