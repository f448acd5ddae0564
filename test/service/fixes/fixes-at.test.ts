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

  it("leave out what is wrong elsewhere", () => {
    const plans = new Plans();
    const document = plans.open("units inhc\nrules { silver 1 }\n");
    const titles = (line: number): string[] => {
      const range = { start: { line, character: 0 }, end: { line, character: 20 } };
      return plans.service.fixes(document, range).map(({ title }) => title);
    };
    assert.deepEqual([titles(0), titles(1)], [["Write `inch`"], ["Write `sliver`"]]);
  });
});
