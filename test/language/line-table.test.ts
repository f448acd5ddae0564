import assert from "node:assert/strict";
import { tableLines } from "../../src/language/line-table.js";

describe("a line table", () => {
  const lines = tableLines("ab\r\nc\rd\n\ne");

  it("counts LF, CR LF and CR as one line end each", () => {
    assert.deepEqual([0, 2, 4, 6, 8, 9].map(lines.lineOf), [0, 0, 1, 2, 3, 4]);
    assert.deepEqual(lines.position(9), { line: 4, character: 0 });
  });

  it("counts characters in UTF-16 units, as editors do", () => {
    assert.deepEqual(tableLines("\u{1f6c1}x").position(2), { line: 0, character: 2 });
  });

  it("draws offsets outside the text in to it", () => {
    assert.deepEqual(lines.position(-3), { line: 0, character: 0 });
    assert.deepEqual(lines.position(99), { line: 4, character: 1 });
    assert.deepEqual(lines.range({ start: 99, end: 120 }).end, { line: 4, character: 1 });
  });

  it("never ends a range before its start", () => {
    const { start, end } = lines.range({ start: 4, end: 3 });
    assert.deepEqual(start, end);
  });

  it("has one line for an empty text", () => {
    assert.deepEqual(tableLines("").position(0), { line: 0, character: 0 });
  });
});
