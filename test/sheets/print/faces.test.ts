import assert from "node:assert/strict";
import { FACES } from "./kit.js";

describe("the print font", () => {
  it("sets a text as wide as its letters together, and in proportion to its size", () => {
    const width = FACES.widthOf("To", 10);
    assert.equal(width, FACES.widthOf("T", 10) + FACES.widthOf("o", 10));
    assert.equal(FACES.widthOf("To", 20), 2 * width);
    assert.equal(FACES.widthOf("", 10), 0);
  });

  it("has figures of one width, so that columns of them stand under each other", () => {
    const widths = new Set(Array.from("0123456789", (figure) => FACES.widthOf(figure, 10)));
    assert.equal(widths.size, 1);
  });

  it("is wider in bold", () => {
    assert.ok(FACES.widthOf("course", 10, "bold") > FACES.widthOf("course", 10));
  });

  it("has the letters of European languages, and the signs that sheets use", () => {
    const letters = "äöüßéèçñøåæœšžłőřţșĳ Ωλ Жщїґ × ± – — … “” ‘’ € № ½ ¾ ⅛ ⅞ − ≤ ≥ ²³°·•";
    assert.deepEqual(FACES.missingIn(letters), []);
  });

  it("names each letter that it lacks once, and prints a sign in its place", () => {
    assert.deepEqual(FACES.missingIn("日本 日 tile"), ["日", "本"]);
    assert.equal(FACES.printable("日本 tile"), "\uFFFD\uFFFD tile");
  });

  it("takes control characters for spaces", () => {
    assert.equal(FACES.printable("a\u0007b\u2028c\td"), "a b c d");
    assert.deepEqual(FACES.missingIn("a\u0007b"), []);
  });

  it("sets words in a file exactly as it measures them", () => {
    const text = "fence at 2 29/32 in: AV To Ty";
    for (const weight of ["regular", "bold"] as const) {
      const font = FACES.fontFor(weight);
      const set = font.layout(text).advanceWidth / font.unitsPerEm;
      assert.ok(Math.abs(set - FACES.widthOf(text, 1, weight)) < 1e-9);
    }
  });
});
