import assert from "node:assert/strict";
import { tableLines } from "../../../src/language/line-table.js";
import { placeOf, Report } from "../../../src/language/resolve/report.js";

const report = (): Report => new Report("a.tileplan", tableLines("one\ntwo\n"));

describe("a report", () => {
  it("turns spans into places of its file; an error unless it says otherwise", () => {
    const told = report();
    told.tell("plan/size", { start: 4, end: 7 }, "m");
    told.tell("plan/size", { start: 4, end: 7 }, "m", { severity: "warning", wall: "w" });
    const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 3 } };
    const common = { code: "plan/size", message: "m", file: "a.tileplan", range };
    assert.deepEqual(told.diagnostics, [
      { ...common, severity: "error" },
      { ...common, severity: "warning", wall: "w" },
    ]);
  });

  it("tells problems of the text as errors", () => {
    const told = report();
    told.tellSyntax([{ code: "syntax/brace", message: "m", start: 0, end: 1 }]);
    assert.deepEqual(
      told.diagnostics.map(({ code, severity }) => [code, severity]),
      [["syntax/brace", "error"]],
    );
  });

  it("gives the place of a fact that was resolved before", () => {
    const origin = report().origin({ start: 0, end: 7, head: { start: 4, end: 7 } });
    assert.deepEqual(placeOf(origin, "m"), {
      file: "a.tileplan",
      range: origin.head,
      message: "m",
    });
    assert.equal(origin.range.end.line, 1);
  });
});
