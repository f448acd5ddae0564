import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import { told } from "./telling.js";

/** What is told of a line in a block; a tile and a trim with all that they need. */
function toldIn(block: string, line: string): string[] {
  const needed = /^(tile|trim) /.test(block) ? "face 2 x 1\n  thickness 1/4\n  " : "";
  return told(`${block} {\n  ${needed}${line}\n}\n`);
}

describe("the grammar of stock", () => {
  const wanted: readonly (readonly [block: string, line: string, message: string])[] = [
    ["tile a", "directional yes", "[yes] found `yes`, wanted the end of the line"],
    ["tile a", "lot 7B", "[7B] found `7B`, wanted a text in quotes"],
    ["tile a", "price a box", "[a] found `a`, wanted a number"],
    ["tile a", "price 42.50", "[] found the end of the line, wanted `a`"],
    ["tile a", "price 42.50 a bag", "[bag] found `bag`, wanted `box` or `piece`"],
    ["tile a", "breakage 3", "[] found the end of the line, wanted `%`"],
    ["tile a", "spares", "[] found the end of the line, wanted a length"],
    ["trim a", "price 3 a box", "[box] found `box`, wanted `piece`"],
    ["saw", "kerf", "[] found the end of the line, wanted a length"],
    ["mortar", "notch 1/4", "[] found the end of the line, wanted `x`"],
    ["mortar", "bag 50 lb", "[] found the end of the line, wanted `covers`"],
    ["mortar", "bag 50 lb covers", "[] found the end of the line, wanted a number"],
    ["grout", "bag 25 lb covers 4 m2", "[covers] found `covers`, wanted the end of the line"],
    ["grout", "bag heavy", "[heavy] found `heavy`, wanted a number"],
    ["sealant", "price 9 a tub", "[tub] found `tub`, wanted `tube`; did you mean `tube`?"],
  ];
  for (const [block, line, message] of wanted) {
    it(`explains ${line} in ${block}`, () => {
      assert.deepEqual(toldIn(block, line), [`syntax/unexpected ${message}`]);
    });
  }

  it("gives a block without a name its title alone", () => {
    assert.deepEqual(told('mortar name "a" {\n}\n'), [
      "syntax/unexpected [name] found `name`, wanted `{`",
    ]);
    assert.deepEqual(told('saw "a" {\n}\n'), ['syntax/unexpected ["a"] found `"a"`, wanted `{`']);
    const [grout] = parse('grout "warm grey" {\n}\n').statements;
    assert.ok(grout?.kind === "grout");
    assert.deepEqual([grout.name, grout.title?.text], [null, "warm grey"]);
  });

  it("lets its words be names", () => {
    const words = ["a", "box", "piece", "bag", "tube", "covers", "saw", "lot", "rip", "lb"];
    const text = words.map((word) => `let ${word} = 1\n`).join("") + `bed ${words.join(" + ")}\n`;
    assert.deepEqual(told(text), []);
    assert.deepEqual(told("tile a {\n  face 2 x 1\n  thickness 1/4\n}\n"), []);
  });
});
