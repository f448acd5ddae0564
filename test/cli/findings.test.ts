import assert from "node:assert/strict";
import { inReadingOrder } from "../../src/cli/findings.js";
import type { Diagnostic } from "../../src/model/index.js";

function at(file: string, line: number, character: number, code = "c"): Diagnostic {
  const place = { line, character };
  return { code, severity: "error", message: "m", file, range: { start: place, end: place } };
}

describe("inReadingOrder", () => {
  it("goes by file as given, then by place; files that were only used come last", () => {
    const found = [at("stock", 0, 0), at("b", 2, 1), at("b", 1, 9), at("a", 5, 0), at("b", 2, 0)];
    assert.deepEqual(
      inReadingOrder(found, ["b", "a"]).map((f) => [f.file, f.range.start.line]),
      [
        ["b", 1],
        ["b", 2],
        ["b", 2],
        ["a", 5],
        ["stock", 0],
      ],
    );
  });

  it("keeps the order of findings at one place, and tells the same one once", () => {
    const found = [at("a", 0, 0, "x"), at("a", 0, 0, "y"), at("a", 0, 0, "x")];
    assert.deepEqual(
      inReadingOrder(found, ["a"]).map((f) => f.code),
      ["x", "y"],
    );
  });
});
