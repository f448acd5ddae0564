import assert from "node:assert/strict";
import { told } from "./telling.js";

/** What is told of a line among the wishes. */
function line(text: string): string[] {
  return told(`prefer {\n  ${text}\n}\n`);
}

describe("a line of wishes that can't be followed", () => {
  const lines: Record<string, string> = {
    courses: "syntax/unexpected [] found the end of the line, wanted `meet`",
    "centre sash": "syntax/unexpected [sash] found `sash`, wanted `on`",
    "no cut": "syntax/unexpected [] found the end of the line, wanted `under`",
    "no cut under": "syntax/unexpected [] found the end of the line, wanted a length",
    "whole courses at sash":
      "syntax/unexpected [sash] found `sash`, wanted `bottom`, `top`, `sill` or `head`",
    "whole courses at sill sash": "syntax/unexpected [sash] found `sash`, wanted `of`",
    "few ends": "syntax/unexpected [ends] found `ends`, wanted `cuts`",
    "equal cuts": "syntax/unexpected [cuts] found `cuts`, wanted `ends`",
  };
  for (const [text, wanted] of Object.entries(lines)) {
    it(`is told: ${text}`, () => assert.deepEqual(line(text), [wanted]));
  }

  it("costs that line alone", () => {
    assert.deepEqual(told("prefer {\n  few\n  equal ends\n}\n"), [
      "syntax/unexpected [] found the end of the line, wanted `cuts`",
    ]);
  });
});
