import assert from "node:assert/strict";
import { comparisonText } from "../../src/compare/index.js";
import { matchLays } from "../../src/compare/match-lays.js";
import { comparisonOf, edited, told, WALL } from "./wall.js";

// Six courses; the top of course 3 is planned at 12 3/8 in.
const set = (lines: string) => edited(WALL, ["from bottom", `from bottom\n    ${lines}`]);
const wordsOf = (before: string, after: string) =>
  [...comparisonText(comparisonOf(before, after))].join("");

describe("lays of which something is set", () => {
  it("are matched course by course with the one lay that they were", () => {
    const [before, after] = [WALL, set("set courses 1 to 3")].map(
      (text) => told(text).solved.walls[0]!,
    );
    const matches = matchLays({ before: before!, after: after! }).map(({ lays, spans, lowest }) => [
      lays.before!.lay.name,
      spans.before,
      lays.after!.lay.name,
      spans.after,
      lowest,
    ]);
    assert.deepEqual(matches, [
      ["field", { first: 1, last: 3 }, "field", { first: 1, last: 3 }, true],
      [
        "field",
        { first: 4, last: Infinity },
        "field over course 3",
        { first: 1, last: Infinity },
        false,
      ],
    ]);
  });

  it("change nothing but that they are set", () => {
    const words = wordsOf(WALL, set("set courses 1 to 3"));
    assert.match(words, /What moved\n {2}set: nothing -> courses 1 to 3\n/);
    assert.doesNotMatch(words, /Pieces|Quantities|Cuts that changed|Alignments/);
    const more = wordsOf(set("set courses 1 to 3"), set("set courses 1 to 5"));
    assert.match(more, /set: courses 1 to 3 -> courses 1 to 5/);
    assert.doesNotMatch(more, /Pieces|Quantities|Cuts that changed/);
  });

  it("tell the top as it was measured, and what it moves", () => {
    const words = wordsOf(set("set courses 1 to 3"), set("set courses 1 to 3 top 12 7/16"));
    assert.match(words, /top of what is set, as measured: as planned -> 12 7\/16 in/);
    assert.match(words, /along the top: 2 in high -> 1 15\/16 in high/);
    assert.doesNotMatch(words, /\bnew piece|pieces? new|gone/);
  });
});
