import assert from "node:assert/strict";
import { told } from "../telling.js";

describe("a scope", () => {
  it("keeps lengths, tiles and trims apart", () => {
    assert.deepEqual(told("tile a {\n  face 1 x 1\n  thickness 1\n}\nbed a\n"), [
      "plan/name-unknown [a] found no length called `a`",
    ]);
  });

  it("takes an unknown name with a dash for a subtraction only when both its parts are lengths", () => {
    assert.deepEqual(told("let a = 1\nbed a-b\n"), [
      "plan/name-unknown [a-b] found no length called `a-b`",
    ]);
    assert.match(told("let a = 1\nlet b = 1\nbed a-b\n")[0]!, /to subtract, write `a - b`$/);
  });
});
