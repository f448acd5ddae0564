import assert from "node:assert/strict";
import { INCH, planOf, resolveText, told } from "../telling.js";

describe("a statement said twice in a block", () => {
  it("is told with the place of the first, which stands", () => {
    const text = "tile a {\n  face 1 x 1\n  face 2 x 2\n  thickness 1\n}\n";
    assert.deepEqual(told(text), [
      "plan/said-twice [face] found `face` again, wanted it once in this block",
    ]);
    assert.equal(resolveText(text).diagnostics[0]!.related![0]!.range.start.line, 1);
    assert.equal(planOf(text).tiles[0]!.face.up, INCH);
  });

  it("at the top of a plan is told too", () => {
    assert.deepEqual(told("units mm\nunits cm\nbed 1\nbed 2\n").length, 2);
  });

  it("stands by its second line where the first is broken", () => {
    const text = "bed\nbed 2\n";
    assert.deepEqual(told(text).length, 1);
    assert.equal(planOf(text).bed, 2 * INCH);
  });

  it("is fine for those that may be many", () => {
    assert.deepEqual(
      told('allow a/b "c"\nallow a/b "d"\nlet a = 1\nlet b = 2\nrules {\n}\nrules {\n}\n'),
      [],
    );
  });
});
