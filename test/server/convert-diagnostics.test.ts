import assert from "node:assert/strict";
import { DiagnosticSeverity } from "vscode-languageserver";
import { lspDiagnostic } from "../../src/server/convert-diagnostics.js";

const range = { start: { line: 1, character: 2 }, end: { line: 1, character: 5 } };
const plain = {
  code: "cut/sliver",
  severity: "hint",
  message: "thin",
  range,
  source: null,
  link: null,
  related: [],
} as const;

describe("a diagnostic for the client", () => {
  it("is the plain one, with the source in its message and behind its code", () => {
    assert.deepEqual(lspDiagnostic(plain, String), {
      code: "cut/sliver",
      severity: DiagnosticSeverity.Hint,
      message: "thin",
      range,
      source: "gaugelath",
    });
    const sourced = lspDiagnostic({ ...plain, source: "ANSI", link: "https://a.com/b" }, String);
    assert.equal(sourced.message, "thin\nSource: ANSI");
    assert.deepEqual(sourced.codeDescription, { href: "https://a.com/b" });
  });

  it("names related places by their addresses", () => {
    const related = [{ file: "/a", range, message: "here" }];
    const { relatedInformation } = lspDiagnostic({ ...plain, related }, (file) => `file://${file}`);
    assert.deepEqual(relatedInformation, [
      { location: { uri: "file:///a", range }, message: "here" },
    ]);
  });
});
