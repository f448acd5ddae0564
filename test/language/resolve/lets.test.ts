import assert from "node:assert/strict";
import { INCH, planOf, told } from "../telling.js";

describe("lets", () => {
  it("may be used before they are declared", () => {
    assert.equal(planOf("bed c\nlet c = b + 1\nlet b = 1\n").bed, 2 * INCH);
  });

  it("in a circle are told once, with the others of the circle", () => {
    assert.deepEqual(told("let a = b\nlet b = c + 1\nlet c = 2 * a\nlet d = a\nbed d\n"), [
      "plan/let-circle [a] found a length that is made of itself: `a` needs `b` needs `c` needs `a`",
    ]);
    assert.deepEqual(told("let a = a + 1\n"), [
      "plan/let-circle [a] found a length that is made of itself: `a` needs `a`",
    ]);
  });

  it("that lead into a circle don't belong to it", () => {
    assert.deepEqual(told("let start = a\nlet a = b\nlet b = a\n"), [
      "plan/let-circle [a] found a length that is made of itself: `a` needs `b` needs `a`",
    ]);
  });

  it("of two circles are told twice, and the rest is worked out", () => {
    const text = "let a = b\nlet b = a\nlet c = d\nlet d = c\nlet e = 2\nbed e\n";
    assert.equal(told(text).length, 2);
    assert.equal(planOf(text).bed, 2 * INCH);
  });

  it("of one name are told, and the first stands", () => {
    const text = "let a = 1\nlet a = 2\nbed a\n";
    assert.deepEqual(told(text), [
      "plan/name-twice [a] found a length called `a` again, wanted another name",
    ]);
    assert.equal(planOf(text).bed, INCH);
  });

  it("that are unknown are told with the nearest name, or as a subtraction without spaces", () => {
    assert.deepEqual(told("let sill = 4\nlet head = 9\nbed sil\n"), [
      "plan/name-unknown [sil] found no length called `sil`; did you mean `sill`?",
    ]);
    assert.deepEqual(told("let sill = 4\nlet head = 9\nbed head-sill\n"), [
      "plan/name-unknown [head-sill] found no length called `head-sill`; to subtract, write `head - sill`",
    ]);
  });

  it("may be a chain of twenty thousand", () => {
    const chain = Array.from({ length: 20_000 }, (_, i) => `let a${i} = a${i + 1}\n`).join("");
    assert.equal(planOf(`${chain}let a20000 = 1\nbed a0\n`).bed, INCH);
  });
});
