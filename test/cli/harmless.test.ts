import assert from "node:assert/strict";
import { harmless } from "../../src/cli/harmless.js";

describe("harmless", () => {
  it("shows as signs or names what could drive a terminal or hide what is there", () => {
    assert.equal(harmless("\u202eevil\u0000"), "<U+202E>evil\u2400");
    assert.equal(harmless("\u001b[2J"), "\u241b[2J");
  });

  it("leaves letters of every kind as they are", () => {
    assert.equal(harmless("café 漆 🛁"), "café 漆 🛁");
  });
});
