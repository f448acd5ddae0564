import assert from "node:assert/strict";
import type { Diagnostic } from "../../src/model/index.js";
import { findingJson } from "../../src/sheets/finding-json.js";

const place = { line: 0, character: 0 };
const BARE: Diagnostic = {
  code: "cut/sliver",
  severity: "error",
  message: "the piece is 1/2 in wide",
  file: "/job/a.tileplan",
  range: { start: place, end: { line: 0, character: 4 } },
};

function shown(file: string): string {
  return file.replace("/job/", "");
}

describe("findingJson", () => {
  it("has what every finding has, and its file by the host's name", () => {
    assert.deepEqual(findingJson(BARE, shown), { ...BARE, file: "a.tileplan" });
  });

  it("has the rest where the finding has it", () => {
    const related = [{ file: "/job/b.tileplan", range: BARE.range, message: "here" }];
    const more = { wall: "back", pieces: ["back/1/1"], source: "common practice", allowed: "why" };
    assert.deepEqual(findingJson({ ...BARE, ...more, related }, shown), {
      ...BARE,
      ...more,
      file: "a.tileplan",
      related: [{ ...related[0], file: "b.tileplan" }],
    });
  });
});
