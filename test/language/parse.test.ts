import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import { costOf, FULL, told } from "./telling.js";

describe("parsing", () => {
  it("takes an empty text for an empty plan", () => {
    for (const text of ["", "\n", "   ", "# nothing\n", "\ufeff"]) {
      assert.deepEqual(parse(text).statements, []);
      assert.deepEqual(parse(text).problems, []);
    }
  });

  it("takes every kind of line end", () => {
    for (const lineEnd of ["\n", "\r\n", "\r"]) {
      const { statements, problems } = parse(FULL.replaceAll("\n", lineEnd));
      assert.deepEqual(problems, []);
      assert.equal(statements.length, 15);
    }
  });

  it("needs no line end after the last line", () => {
    assert.deepEqual(parse("bed 1/8").problems, []);
    assert.deepEqual(parse("wall a { size 4 x 5 }").problems, []);
  });

  it("tells one problem of a line, the first", () => {
    assert.deepEqual(told("bed 5 8/7 8/7 %\n").length, 1);
  });

  it("tells problems in the order of the text", () => {
    const starts = parse("bed\n}\nfoo\nlet a = 5 8/7\nwall {\n").problems.map(({ start }) => start);
    assert.deepEqual(
      starts,
      [...starts].sort((a, b) => a - b),
    );
  });

  it("refuses a text past two million characters at once", () => {
    const text = "x".repeat(2_000_001);
    assert.ok(costOf(() => parse(text)) < 1000);
    const [problem, ...others] = parse(text).problems;
    assert.equal(problem?.code, "syntax/too-long");
    assert.equal(others.length, 0);
  });

  it("gives the same tree for the same text, whatever was parsed before", () => {
    const { statements } = parse(FULL);
    parse("wall { { { }");
    assert.deepEqual(parse(FULL).statements, statements);
  });
});
