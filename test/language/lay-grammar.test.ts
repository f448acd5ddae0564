import assert from "node:assert/strict";
import { told, wallText } from "./telling.js";

describe("the grammar of a lay", () => {
  const lines: Record<string, string> = {
    "covers 8": "found `8`, wanted `left`, `right`, `bottom` or `top`",
    "covers bottom 8": "found `8`, wanted `to`",
    "over 3": "found `3`, wanted a name",
    between: "found the end of the line, wanted a length",
    "courses of field": "found `of`, wanted",
    "courses 8 of": "found the end of the line, wanted a name",
    "set 1 to 6": "found `1`, wanted `courses`",
    "set courses 1": "found the end of the line, wanted `to`",
    "set courses 1 to 6 top": "found the end of the line, wanted a length",
    "set courses 1 to 6 top 36 at": "found the end of the line, wanted `left`, `right` or a length",
    "courses 8,": "found the end of the line, wanted",
  };
  for (const [line, wanted] of Object.entries(lines)) {
    it(`explains ${line}`, () => {
      const all = told(wallText(`  lay field {\n    bond stack\n    ${line}\n  }`));
      assert.ok(
        all.some((each) => each.includes(wanted)),
        all.join("\n"),
      );
    });
  }
});
