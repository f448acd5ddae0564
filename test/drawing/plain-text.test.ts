import assert from "node:assert/strict";
import fc from "fast-check";
import { idPart, plainText } from "../../src/drawing/plain-text.js";

describe("text from a person's file", () => {
  it("keeps letters of every script, and one space for any white space", () => {
    assert.equal(plainText("Küche  \t 浴室\n№ 4"), "Küche 浴室 № 4");
  });

  it("loses what no picture can show", () => {
    assert.equal(plainText("a\u0000b\u001bc\u007fd\u202ee\ufefff\ud800g\uffff"), "abcdefg");
  });

  it("never holds what XML forbids", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        // eslint-disable-next-line no-control-regex
        assert.doesNotMatch(plainText(text), /[\u0000-\u001f\u007f-\u009f\ufffe\uffff]/);
        assert.doesNotThrow(() => encodeURIComponent(plainText(text)), "no half of a pair");
      }),
    );
  });
});

describe("a name as a part of an id", () => {
  it("is itself where it is plain, and stays apart from others where it isn't", () => {
    assert.equal(idPart("back-2"), "back-2");
    assert.equal(idPart("a b"), "a_20_b");
    assert.notEqual(idPart("a_b"), idPart("a-b"));
    assert.notEqual(idPart("a_20_b"), idPart("a b"));
  });
});
