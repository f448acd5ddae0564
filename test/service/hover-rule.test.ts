import assert from "node:assert/strict";
import { RULES } from "../../src/rules/index.js";
import { hoverRule } from "../../src/service/hover-rule.js";

describe("a rule by its code", () => {
  it("is told for every rule, with its source", () => {
    for (const { code, source } of RULES) {
      assert.match(hoverRule(code)!, /source: /, code);
      assert.ok(source.length > 0);
    }
  });

  it("is none for an unknown code", () => {
    assert.equal(hoverRule("cut/nothing"), null);
  });
});
