import assert from "node:assert/strict";
import { randomText } from "../../src/extension/random-text.js";

describe("random text", () => {
  it("is letters and digits, other ones each time", () => {
    const texts = Array.from({ length: 200 }, randomText);
    for (const text of texts) assert.match(text, /^[A-Za-z0-9]{32}$/);
    assert.equal(new Set(texts).size, texts.length);
    assert.equal(new Set(texts.join("")).size, 62);
  });
});
