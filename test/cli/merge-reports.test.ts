import assert from "node:assert/strict";
import { mergeReports } from "../../src/cli/merge-reports.js";

describe("mergeReports", () => {
  const check = { schema: 1, files: ["a"], diagnostics: [] };
  const place = { line: 3, character: 1 };
  const found = { code: "c", message: "m", file: "stock", range: { start: place, end: place } };

  it("tells a finding of a shared file once, behind those of the plans", () => {
    const own = { ...found, file: "b" };
    const text = mergeReports([
      { name: "1", report: { ...check, diagnostics: [found] } },
      { name: "2", report: { schema: 1, files: ["b"], diagnostics: [own, found] } },
    ]);
    assert.deepEqual(JSON.parse(text), { schema: 1, files: ["a", "b"], diagnostics: [own, found] });
  });

  it("refuses reports of different kinds, naming both", () => {
    const compare = { schema: 1, plans: [] };
    assert.throws(
      () =>
        mergeReports([
          { name: "x", report: check },
          { name: "y", report: compare },
        ]),
      /y is a report of compare, and x is a report of check/,
    );
  });

  it("merges logs without runs", () => {
    const log = { version: "2.1.0", runs: [] };
    assert.deepEqual(JSON.parse(mergeReports([{ name: "x", report: log }])), log);
  });
});
