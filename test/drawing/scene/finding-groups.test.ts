import assert from "node:assert/strict";
import { findingGroups } from "../../../src/drawing/scene/finding-groups.js";
import type { Diagnostic, Severity } from "../../../src/model/index.js";

function finding(wall: string, severity: Severity, code: string, allowed?: string): Diagnostic {
  const nowhere = { line: 0, character: 0 };
  return {
    code,
    severity,
    message: code,
    file: "x",
    range: { start: nowhere, end: nowhere },
    wall,
    ...(allowed === undefined ? {} : { allowed }),
  };
}

describe("findings in numbers", () => {
  it("share one number for a rule on a wall; walls come in order, the gravest first", () => {
    const { groups } = findingGroups(
      ["a", "b"],
      [
        finding("b", "error", "cut/sliver"),
        finding("a", "warning", "cut/under-half"),
        finding("a", "error", "cut/sliver"),
        finding("a", "error", "cut/sliver"),
      ],
    );
    const told = groups.map(({ number, wall, severity, findings }) => [
      number,
      wall,
      severity,
      findings.length,
    ]);
    assert.deepEqual(told, [
      ["1", "a", "error", 2],
      ["2", "a", "warning", 1],
      ["3", "b", "error", 1],
    ]);
  });

  it("leave out what is allowed, and what speaks of no wall", () => {
    const { groups } = findingGroups(
      ["a"],
      [finding("a", "warning", "cut/sliver", "agreed"), finding("elsewhere", "error", "x")],
    );
    assert.deepEqual(groups, []);
  });

  it("end at 24, and say how many are left", () => {
    const many = Array.from({ length: 30 }, (_, i) => finding("a", "warning", `code/${i}`));
    const { groups, untold } = findingGroups(["a"], many);
    assert.equal(groups.length, 24);
    assert.equal(untold, 6);
  });
});
