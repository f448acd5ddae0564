import assert from "node:assert/strict";
import { exampleText } from "../../support/examples.js";
import { Plans } from "../plans.js";

describe("the fixes at a place", () => {
  it("are those of what is wrong there", () => {
    const plans = new Plans();
    const text = "units inhc\nbed nothing-here\n";
    const at = { line: 0, character: 8 };
    const fixes = plans.service.fixes(plans.open(text), { start: at, end: at });
    assert.deepEqual(
      fixes.map(({ title }) => title),
      ["Write `inch`"],
    );
  });

  it("are each offered once, though several findings have it", () => {
    const plans = new Plans();
    const range = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
    const fixes = plans.service.fixes(plans.open(exampleText("faults.tileplan")), range);
    const keys = fixes.map(({ title, edits }) => JSON.stringify([title, edits]));
    assert.equal(new Set(keys).size, keys.length);
    assert.ok(keys.length > 5);
  });
});
