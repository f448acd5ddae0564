import assert from "node:assert/strict";
import { check, RULES } from "../../src/rules/index.js";
import { TRADE_RULES } from "../../src/rules/table.js";
import { LIMITS } from "../../src/model/index.js";
import { exampleText } from "../support/examples.js";
import { solveClean } from "../support/solve-text.js";

describe("the table of rules", () => {
  it("lists each code once, with a title and a source", () => {
    assert.equal(new Set(RULES.map(({ code }) => code)).size, RULES.length);
    for (const { code, title, source } of RULES) {
      assert.match(code, /^[a-z]+\/[a-z-]+$/);
      assert.ok(title.length > 0 && source.length > 0, code);
    }
  });

  it("has something to say of the example of faults with every rule, but of the largest wall and of rooms", () => {
    const found = check(solveClean(exampleText("faults.tileplan")).solved);
    const silent = RULES.filter((rule) => !found.some(({ code }) => code === rule.code));
    assert.deepEqual(
      silent.map(({ code }) => code),
      ["wall/too-large", "wall/unsettled", "wish/not-met"],
    );
  });

  it("has a rule for every limit that a plan may state, and no limit twice", () => {
    const used = TRADE_RULES.flatMap(({ limit }) => limit ?? []).sort();
    assert.deepEqual(used, Object.keys(LIMITS).sort());
  });
});
