import assert from "node:assert/strict";
import { comparisonOf, edited, WALL } from "./wall.js";
import { Lengths } from "../../src/compare/words/lengths.js";
import { factWords } from "../../src/compare/words/fact-words.js";

const STATED = "up full course from bottom";
const withSoft = (...joints: string[]) =>
  edited(WALL, [STATED, [STATED, ...joints].join("\n    ")]);

/** What is said of the soft joints in the tile, one line each. */
function facts(before: string, after: string): string[] {
  return comparisonOf(before, after)
    .walls[0]!.facts.filter(({ name, subject }) => name === "soft joint" && subject.of === "wall")
    .map((fact) => factWords(fact, new Lengths("inch")));
}

const OVER = "movement joint over course 2";
const AT = "movement joint at 16";

describe("soft joints in the tile, compared", () => {
  it("say what came and what went", () => {
    assert.deepEqual(facts(WALL, withSoft(OVER)), ["soft joint: none -> over course 2"]);
    assert.deepEqual(facts(withSoft(AT, OVER), withSoft(OVER)), [
      "soft joint: at 16 9/16 in -> none",
    ]);
  });

  it("say where one moved to", () => {
    const moved = withSoft("movement joint over course 3");
    assert.deepEqual(facts(withSoft(OVER), moved), ["soft joint: over course 2 -> over course 3"]);
  });

  it("say nothing of one that is written otherwise", () => {
    assert.deepEqual(facts(withSoft(AT), withSoft("movement joint at 16 1/2")), []);
  });

  it("say nothing of a tile's new name", () => {
    const lays = (name: string) =>
      edited(
        WALL,
        ["lay field {", "lay field {\n    covers bottom to 9\n    between movement 1/4"],
        ["tile field", `tile ${name} "second" {\n  face 4 x 4\n  thickness 1/4\n}\ntile field`],
        ["wall back", "wall back"],
      ).replace(/\n}\n$/, `\n  lay ${name} {\n    bond stack\n    joint 1/8\n  }\n}\n`);
    assert.deepEqual(facts(lays("upper"), lays("other")), []);
    assert.deepEqual(facts(lays("upper").replace("between movement", "between"), lays("upper")), [
      "soft joint: none -> between field and upper, 1/4 in",
    ]);
  });
});
