import assert from "node:assert/strict";
import { counted, exitOf, tallyOf, tallyWords } from "../../src/cli/tally.js";
import type { Diagnostic, Severity } from "../../src/model/index.js";

function found(severity: Severity, allowed?: string): Diagnostic {
  const place = { line: 0, character: 0 };
  const base = {
    code: "c",
    severity,
    message: "m",
    file: "f",
    range: { start: place, end: place },
  };
  return allowed === undefined ? base : { ...base, allowed };
}

describe("the tally", () => {
  it("counts findings by their severity, the allowed ones apart", () => {
    const tally = tallyOf([found("error"), found("error", "why"), found("warning")]);
    assert.deepEqual(tally, { error: 1, warning: 1, information: 0, allowed: 1 });
    assert.equal(tallyWords(tally), "1 error, 1 warning, 1 allowed");
  });

  it("says none in words, and leaves notes out where there are none", () => {
    assert.equal(tallyWords(tallyOf([])), "no errors, no warnings");
    assert.equal(tallyWords(tallyOf([found("information")])), "no errors, no warnings, 1 note");
    assert.equal(counted(2, "plan"), "2 plans");
  });

  it("ends with 1 for an error, and for a warning only when strict", () => {
    assert.equal(exitOf(tallyOf([found("error")]), false), 1);
    assert.equal(exitOf(tallyOf([found("warning")]), false), 0);
    assert.equal(exitOf(tallyOf([found("warning")]), true), 1);
    assert.equal(exitOf(tallyOf([found("information")]), true), 0);
    assert.equal(exitOf(tallyOf([found("error", "why"), found("warning", "why")]), true), 0);
  });
});
