import assert from "node:assert/strict";
import { told, wallText } from "./telling.js";

describe("the grammar of a wall", () => {
  const lines: Record<string, string> = {
    "size 60": "syntax/unexpected [] found the end of the line, wanted `x`",
    "left cornr end under":
      "syntax/unexpected [cornr] found `cornr`, wanted `pan`, `tub`, `floor`, `ceiling`, `counter`, `wall`, `corner`, `outside` or `free`; did you mean `corner`?",
    "left corner end": "syntax/unexpected [] found the end of the line, wanted `under` or `over`",
    "left corner end udner":
      "syntax/unexpected [udner] found `udner`, wanted `under` or `over`; did you mean `under`?",
    "bottom pan measured": "syntax/unexpected [] found the end of the line, wanted a length",
    "bottom pan measured 0": "syntax/unexpected [] found the end of the line, wanted `:`",
    "bottom pan measured 0: 1,": "syntax/unexpected [] found the end of the line, wanted a length",
    "bottom pan movment 1/8":
      "syntax/unexpected [movment] found `movment`, wanted the end of the line; did you mean `movement`?",
    "right free trim": "syntax/unexpected [] found the end of the line, wanted a name",
    "hole valve 30, 44": "syntax/unexpected [30] found `30`, wanted `at`",
    "hole valve at 30, 44 across 4 plate":
      "syntax/unexpected [] found the end of the line, wanted a length",
    "hole valve at 30, 44": "syntax/unexpected [] found the end of the line, wanted `across`",
  };
  for (const [line, wanted] of Object.entries(lines)) {
    it(`explains ${line}`, () => {
      assert.ok(
        told(wallText(`  ${line}`)).includes(wanted),
        told(wallText(`  ${line}`)).join("\n"),
      );
    });
  }

  const layLines: Record<string, string> = {
    "bond runing 1/2":
      "syntax/unexpected [runing] found `runing`, wanted `stack` or `running`; did you mean `running`?",
    "across tile on wall": "syntax/unexpected [on] found `on`, wanted `centred`",
    "across full tile from top":
      "syntax/unexpected [top] found `top`, wanted `left` or `right`; did you mean `to`?",
    "up full course":
      "syntax/unexpected [] found the end of the line, wanted `from`, `under` or `over`",
    "up half": "syntax/unexpected [half] found `half`, wanted `full` or `joint`",
  };
  for (const [line, wanted] of Object.entries(layLines)) {
    it(`explains ${line}`, () => {
      const text = wallText(`  lay field {\n    ${line}\n  }`);
      assert.ok(
        told(text).some((message) => message.startsWith(wanted.split("; did")[0]!)),
        told(text).join("\n"),
      );
    });
  }
});
