import assert from "node:assert/strict";
import type { Diagnostic } from "../../../src/model/index.js";
import { findingsBlocks } from "../../../src/sheets/paper/findings-block.js";

const at = { line: 0, character: 0 };
const found = (severity: Diagnostic["severity"], more: Partial<Diagnostic> = {}): Diagnostic => ({
  code: "cut/sliver",
  severity,
  message: `found ${severity}`,
  file: "a.tileplan",
  range: { start: at, end: at },
  wall: "back",
  source: "common practice",
  ...more,
});

describe("findings on a wall's page", () => {
  it("stop the work where they are errors", () => {
    assert.deepEqual(findingsBlocks([found("error")], "back"), [
      {
        kind: "caution",
        lines: ["Do not cut before this is settled:", "found error [cut/sliver; common practice]"],
      },
    ]);
  });

  it("ask for a look where they are warnings, and say nothing of the rest", () => {
    const blocks = findingsBlocks([found("warning"), found("information")], "back");
    assert.deepEqual(blocks, [
      {
        kind: "list",
        numbered: false,
        items: ["Look at this: found warning [cut/sliver; common practice]"],
      },
    ]);
  });

  it("are the wall's own, without those that are allowed", () => {
    assert.deepEqual(findingsBlocks([found("error", { wall: "side" })], "back"), []);
    assert.deepEqual(findingsBlocks([found("information", { allowed: "so" })], "back"), []);
  });

  it("are those of no wall on the page of the whole job", () => {
    const { wall: _, source: __, ...syntax } = found("error", { code: "syntax/length" });
    assert.deepEqual(findingsBlocks([syntax, found("error")], null), [
      {
        kind: "caution",
        lines: ["Do not cut before this is settled:", "found error [syntax/length]"],
      },
    ]);
  });
});
