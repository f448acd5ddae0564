import assert from "node:assert/strict";
import { isName } from "../../src/language/index.js";

describe("a name", () => {
  it("is a letter, then letters, digits, _ and -", () => {
    for (const name of ["a", "back-2", "x_1", "été", "wall"]) assert.ok(isName(name), name);
  });

  it("is no number, no two words, and not empty", () => {
    for (const text of ["", "3a", "a b", " a", "a ", '"a"', "a.b", "{"]) {
      assert.ok(!isName(text), JSON.stringify(text));
    }
  });
});
