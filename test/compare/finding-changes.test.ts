import assert from "node:assert/strict";
import type { Diagnostic } from "../../src/model/index.js";
import { findingChanges } from "../../src/compare/finding-changes.js";

const SAME = { before: (name: string) => name, after: (name: string) => name };

function found(message: string, more: Partial<Diagnostic> = {}): Diagnostic {
  const place = { line: 0, character: 0 };
  return {
    code: "cut/sliver",
    severity: "error",
    message,
    file: "a",
    range: { start: place, end: place },
    wall: "back",
    ...more,
  };
}

describe("findingChanges", () => {
  it("says nothing of what is found in the same words on another line", () => {
    const place = { line: 9, character: 3 };
    const moved = found("one", { range: { start: place, end: place } });
    assert.deepEqual(findingChanges([found("one")], [moved], SAME), []);
  });

  it("tells what came and what went", () => {
    assert.deepEqual(findingChanges([found("one")], [found("two")], SAME), [
      { before: found("one"), after: null },
      { before: null, after: found("two") },
    ]);
  });

  it("takes other figures at the same place for the same finding", () => {
    const before = found("8 pieces at the left end are 7/8 in wide; at least 1 in is wanted");
    const after = found("1 piece at the left end is just under 1 in wide; at least 1 in is wanted");
    assert.deepEqual(findingChanges([before], [after], SAME), [{ before, after }]);
    const range = found(
      "8 pieces at the left end are 1/2 in to 7/8 in wide; at least 1 in is wanted",
    );
    assert.deepEqual(findingChanges([before], [range], SAME), [{ before, after: range }]);
    const right = found("8 pieces at the right end are 7/8 in wide; at least 1 in is wanted");
    assert.equal(findingChanges([before], [right], SAME).length, 2);
  });

  it("tells a waiver", () => {
    const waived = found("one", { severity: "information", allowed: "looked well" });
    assert.deepEqual(findingChanges([found("one")], [waived], SAME), [
      { before: found("one"), after: waived },
    ]);
  });

  it("knows renamed walls and openings", () => {
    const before = found("2 pieces under window sash", { wall: "back" });
    const after = found("2 pieces under window light", { wall: "rear" });
    const renamed = (name: string) => ({ back: "rear", sash: "light" })[name] ?? name;
    assert.deepEqual(findingChanges([before], [after], { ...SAME, before: renamed }), []);
    assert.equal(findingChanges([before], [after], SAME).length, 2);
  });
});
