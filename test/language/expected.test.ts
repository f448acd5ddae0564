import assert from "node:assert/strict";
import { expectedAt } from "../../src/language/index.js";

function expectedIn(marked: string): ReturnType<typeof expectedAt> {
  const offset = marked.indexOf("|");
  return expectedAt(marked.slice(0, offset) + marked.slice(offset + 1), offset);
}

describe("what is expected at a place", () => {
  it("is a statement of the block, at its beginning", () => {
    assert.equal(expectedIn("|")!.block, "plan");
    const inLay = expectedIn("wall a {\n  lay b {\n    |\n  }\n}\n")!;
    assert.equal(inLay.block, "lay");
    assert.deepEqual(inLay.words, [
      "bond",
      "joint",
      "across",
      "up",
      "covers",
      "at",
      "size",
      "over",
      "under",
      "courses",
      "between",
      "set",
      "movement",
      "allow",
    ]);
  });

  it("is what the grammar says inside a line, from the word that was begun", () => {
    const { words, from, statement } = expectedIn("wall a {\n  left pan mea|\n}\n")!;
    assert.deepEqual(words, ["measured", "movement", "joint"]);
    assert.deepEqual([from, statement], [20, "left"]);
  });

  it("is a name of a kind", () => {
    assert.deepEqual(expectedIn("wall a {\n  left corner |\n}\n")!.names, ["wall"]);
    assert.deepEqual(expectedIn("wall a {\n  lay |\n}\n")!.names, ["tile"]);
    assert.deepEqual(expectedIn("allow |\n")!.names, ["code"]);
    assert.deepEqual(expectedIn("wall |\n")!.names, ["new"]);
  });

  it("is a length, and a unit behind a number", () => {
    assert.equal(expectedIn("bed |\n")!.length, true);
    assert.equal(expectedIn("bed 3|\n")!.unit, true);
  });

  it("is nothing in a comment, and a text inside quotes", () => {
    assert.equal(expectedIn("bed 1 # |\n"), null);
    assert.equal(expectedIn('use "a|"\n')!.text, "inside");
  });

  it("goes by indentation where braces are missing", () => {
    assert.equal(expectedIn("wall a {\n  size 1 x 2\n\n|")!.block, "plan");
    assert.equal(expectedIn("wall a {\n  size 1 x 2\n  |")!.block, "wall");
  });

  it("goes by the braces where they match, whatever the indentation", () => {
    assert.equal(expectedIn("wall a {\nlay b {\n|\n}\n}\n")!.block, "lay");
  });

  it("is an entry of the rules, each behind its comma", () => {
    const next = expectedIn("rules { sliver 1, | }\n")!;
    assert.deepEqual([next.block, next.statement], ["rules", null]);
    const value = expectedIn("rules { sliver 1, half | }\n")!;
    assert.deepEqual([value.statement, value.words], ["half", ["off", "on"]]);
  });
});
