import assert from "node:assert/strict";
import { paperOf } from "../../../src/sheets/index.js";
import { layOut } from "../../../src/sheets/print/lay-out.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleNames } from "../../support/examples.js";
import {
  exampleOutcome,
  exampleScene,
  FACES,
  faultsOf,
  paperWith,
  tableOf,
  wordsOf,
} from "./kit.js";

describe("a paper on its sheets", () => {
  it("has every kind of block", () => {
    const paper = paperWith(
      { kind: "heading", text: "H1" },
      { kind: "text", text: "T1" },
      { kind: "caution", lines: ["C1"] },
      { kind: "list", numbered: true, items: ["L1"] },
      tableOf(2),
      { kind: "picture", scene: exampleScene("back-wall.tileplan"), caption: "P1" },
      { kind: "pole", caption: "S1", direction: "up", from: 0, to: 1e8, marks: [] },
    );
    const words = layOut(paper, "letter", FACES).sheets.flatMap(wordsOf);
    for (const word of ["H1", "T1", "C1", "L1", "Courses", "P1", "S1"]) {
      assert.ok(words.includes(word), word);
    }
  });

  it("numbers its sheets", () => {
    const { sheets } = layOut(paperWith(tableOf(120)), "a4", FACES);
    assert.ok(sheets.length > 1);
    sheets.forEach((sheet, i) => {
      assert.equal(wordsOf(sheet).at(-1), `${i + 1} of ${sheets.length}`);
    });
  });

  it("tells on the sheet which letters could not be printed, by their numbers", () => {
    const laid = layOut(paperWith({ kind: "text", text: "日本 tile" }), "letter", FACES);
    assert.deepEqual(laid.missing, ["日", "本"]);
    assert.match(
      wordsOf(laid.sheets[0]!).join(" "),
      /The print font has no letter for U\+65E5, U\+672C: \uFFFD stands there instead\./,
    );
  });

  for (const name of exampleNames()) {
    const { solved, diagnostics } = exampleOutcome(name);
    if (solved.walls.length === 0) continue;
    for (const size of ["letter", "a4"] as const) {
      it(`lays ${name} on ${size} with nothing beyond a margin and no text over another`, () => {
        const paper = paperOf(solved, diagnostics, takeoff(solved), { revision: "abc1234" });
        const { sheets, missing } = layOut(paper, size, FACES);
        assert.deepEqual(missing, []);
        assert.deepEqual(
          sheets.flatMap((sheet) => faultsOf(sheet)),
          [],
        );
        const pages = new Set(sheets.map(({ page }) => page));
        assert.deepEqual(
          [...pages],
          paper.pages.map(({ id }) => id),
        );
      });
    }
  }
});
