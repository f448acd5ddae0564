import assert from "node:assert/strict";
import { CodeActionKind, type Diagnostic } from "vscode-languageserver";
import { lspFix } from "../../src/server/convert-fixes.js";

const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 3 } };
const document = { uri: "file:///a.tileplan", file: "/a.tileplan", version: 1, text: "" };
const edits = [{ range, text: "x" }];
const mends = { code: "cut/sliver", severity: "error", message: "", file: "", range } as const;

describe("a mend for the client", () => {
  it("is a quick fix of the diagnostics that it clears", () => {
    const shown: Diagnostic[] = [
      { code: "cut/sliver", message: "", range },
      { code: "cut/taper", message: "", range },
    ];
    const action = lspFix({ title: "t", mends, preferred: true, edits }, document, shown);
    assert.equal(action.kind, CodeActionKind.QuickFix);
    assert.deepEqual(action.diagnostics, [shown[0]]);
    assert.deepEqual(action.edit, { changes: { [document.uri]: [{ range, newText: "x" }] } });
  });

  it("is a rewrite where nothing is wrong", () => {
    const action = lspFix({ title: "t", mends: null, preferred: false, edits }, document, []);
    assert.equal(action.kind, CodeActionKind.RefactorRewrite);
    assert.ok(!("diagnostics" in action) && !("isPreferred" in action));
  });
});
