import assert from "node:assert/strict";
import { told } from "./telling.js";

/** What is told of a line in a lay, but of what a plan has to state besides. */
function line(text: string): string[] {
  const plan = `wall w {\n  lay field {\n    ${text}\n  }\n}\n`;
  return told(plan).filter((each) => each.startsWith("syntax/"));
}

describe("a line of a soft joint that can't be followed", () => {
  const lines: Record<string, string> = {
    movement: "syntax/unexpected [] found the end of the line, wanted `joint`",
    "movement 1/8": "syntax/unexpected [1/8] found `1/8`, wanted `joint`",
    "movement joint": "syntax/unexpected [] found the end of the line, wanted `at` or `over`",
    "movement joint 120": "syntax/unexpected [120] found `120`, wanted `at` or `over`",
    "movement joint at": "syntax/unexpected [] found the end of the line, wanted a length",
    "movement joint over 12": "syntax/unexpected [12] found `12`, wanted `course`",
    "movement joint over course": "syntax/unexpected [] found the end of the line, wanted a length",
    "between movement (": "syntax/unexpected [] found the end of the line, wanted a length",
    between: "syntax/unexpected [] found the end of the line, wanted a length",
  };
  for (const [text, wanted] of Object.entries(lines)) {
    it(`is told: ${text}`, () => assert.deepEqual(line(text), [wanted]));
  }
});
