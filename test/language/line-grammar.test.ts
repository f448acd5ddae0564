import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import { told } from "./telling.js";

describe("the grammar of lengths", () => {
  for (const length of [
    "5 7/8",
    "a",
    "-5",
    "+ 1/8",
    "(a + 5) * 2",
    "a*2/3 - b",
    "-(a)",
    "18in-2in",
    "60/4",
  ]) {
    it(`follows ${length}`, () => assert.deepEqual(parse(`let c = ${length}`).problems, []));
  }

  const broken: Record<string, string> = {
    "let c =": "syntax/unexpected [] found the end of the line, wanted a length",
    "let c = 5 +": "syntax/unexpected [] found the end of the line, wanted a length",
    "let c = (5": "syntax/unexpected [] found the end of the line, wanted `)`",
    "let c = 5)": "syntax/unexpected [)] found `)`, wanted the end of the line",
    "let c = 5 6": "syntax/unexpected [6] found `6`, wanted the end of the line",
    "let c = --5": "syntax/unexpected [-] found `-`, wanted a length",
    'let c = "5"': 'syntax/unexpected ["5"] found `"5"`, wanted a length',
    "let 5 = c": "syntax/unexpected [5] found `5`, wanted a name",
    "let c 5": "syntax/unexpected [5] found `5`, wanted `=`",
  };
  for (const [line, wanted] of Object.entries(broken)) {
    it(`explains ${line}`, () => assert.deepEqual(told(`${line}\n`), [wanted]));
  }
});
