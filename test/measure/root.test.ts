import assert from "node:assert/strict";
import { rootRaised, rootRounded } from "../../src/measure/root.js";

describe("a root rounded to the nearest whole number", () => {
  it("is the root of a square", () => {
    for (const n of [0n, 1n, 2n, 3n, 10n, 4_294_967_296n, 9_007_199_254_740_991n]) {
      assert.equal(rootRounded(n * n), Number(n));
    }
  });

  it("is that of a fraction", () => {
    assert.equal(rootRounded(9n, 4n), 2, "1.5 is rounded up");
    assert.equal(rootRounded(2n), 1);
    assert.equal(rootRounded(3n), 2);
    assert.equal(rootRounded(1n, 5n), 0);
  });

  it("is the nearest to every number up to ten thousand, halves up", () => {
    for (let square = 0; square <= 10_000; square++) {
      const root = rootRounded(BigInt(square));
      assert.ok((2 * root - 1) ** 2 <= 4 * square || root === 0, `${square}`);
      assert.ok(4 * square < (2 * root + 1) ** 2, `${square}`);
    }
  });

  it("stays exact past 2^53", () => {
    const n = 3_037_000_499_000_000_000n;
    assert.equal(rootRounded(n * n + n - 1n), Number(n));
    assert.equal(rootRounded(n * n - 1n), Number(n));
  });
});

describe("a root raised to a whole number", () => {
  it("is the least whole number that is not under it", () => {
    for (let square = 0; square <= 1_000; square++) {
      assert.equal(Number(rootRaised(BigInt(square))), Math.ceil(Math.sqrt(square)));
    }
  });

  it("stays exact past 2^53", () => {
    const n = 3_037_000_499_000_000_000n;
    assert.equal(rootRaised(n * n), n);
    assert.equal(rootRaised(n * n + 1n), n + 1n);
  });
});
