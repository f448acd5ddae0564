import assert from "node:assert/strict";
import { mend } from "./mending.js";

describe("a character that other programs make", () => {
  it("becomes the fraction that it means, apart from the whole number before it", () => {
    const { text, codes } = mend("let a = 5½\n", "syntax/character", /`1\/2`/);
    assert.equal(text, "let a = 5 1/2\n");
    assert.deepEqual(codes, []);
  });

  it("becomes the sign that it means", () => {
    const { text, codes } = mend("let a = 5 − 3\n", "syntax/character", /`-`/);
    assert.equal(text, "let a = 5 - 3\n");
    assert.deepEqual(codes, []);
  });
});
