import assert from "node:assert/strict";
import { linesOf, sourceLine } from "../../src/cli/source-line.js";

/** The line and what is underlined, for characters `from` to `to` of the first line. */
function shown(text: string, from: number, to: number, endLine = 0): string {
  const range = { start: { line: 0, character: from }, end: { line: endLine, character: to } };
  const line = sourceLine(linesOf(text), range)!;
  return `${line.text}\n${line.underline.indent}${line.underline.carets}`;
}

describe("sourceLine", () => {
  it("puts carets under the range", () => {
    assert.equal(shown("face 5 x 3", 5, 6), "face 5 x 3\n     ^");
    assert.equal(shown("face 5 x 3", 0, 4), "face 5 x 3\n^^^^");
  });

  it("puts one caret where the range is empty, at the line's end too", () => {
    assert.equal(shown("face", 2, 2), "face\n  ^");
    assert.equal(shown("face", 4, 4), "face\n    ^");
    assert.equal(shown("", 0, 0), "\n^");
  });

  it("underlines to the line's end where the range goes on", () => {
    assert.equal(shown("wall a {  \n}", 0, 1, 1), "wall a {\n^^^^^^^^");
  });

  it("shows tabs as blanks and still points right", () => {
    assert.equal(shown("\tface 5", 1, 5), "    face 5\n    ^^^^");
    assert.equal(shown("a\tface\t5", 7, 8), "a   face    5\n            ^");
  });

  it("underlines wide characters in full, and no more for those that take no room", () => {
    assert.equal(shown(`"漆喰" x`, 0, 4), `"漆喰" x\n^^^^^^`);
    assert.equal(shown(`"漆喰" x`, 5, 6), `"漆喰" x\n       ^`);
    assert.equal(shown("e\u0301 x", 3, 4), "e\u0301 x\n  ^");
  });

  it("shows control characters as signs, so that a plan can't drive the terminal", () => {
    assert.equal(shown("a\u001b[31mb", 6, 7), "a\u241b[31mb\n      ^");
  });

  it("shows a very long line round the range", () => {
    const text = "x".repeat(1_000_000);
    const [line, underline] = shown(text, 500_000, 500_003).split("\n");
    assert.ok(line!.length <= 162, `${line!.length} characters`);
    assert.ok(line!.startsWith("…x") && line!.endsWith("x…"));
    assert.equal(underline, `${" ".repeat(41)}^^^`);
  });

  it("keeps within a long line when the range does not end in what is shown", () => {
    const [line, underline] = shown("x".repeat(1000), 10, 900).split("\n");
    assert.equal(line, `${"x".repeat(160)}…`);
    assert.equal(underline, `${" ".repeat(10)}${"^".repeat(150)}`);
  });

  it("counts lines as editors do", () => {
    assert.deepEqual(linesOf("a\r\nb\rc\n"), ["a", "b", "c", ""]);
  });

  it("shows nothing for a line that is not there", () => {
    const place = { line: 3, character: 0 };
    assert.equal(sourceLine(["a"], { start: place, end: place }), null);
  });
});
