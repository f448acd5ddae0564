import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import { plainStatement } from "./plain-statement.js";
import { FULL } from "./telling.js";

describe("statements of the syntax tree", () => {
  it("keeps a line that is broken as what it would have been", () => {
    assert.deepEqual(plainStatement("bed\n", 0), { kind: "broken", meant: "bed" });
    assert.deepEqual(plainStatement("wall w {\n  left corner\n}\n", 0, 0), {
      kind: "broken",
      meant: "left",
    });
  });

  it("keeps a block whose heading is broken", () => {
    const [wall] = parse("wall 9 {\n  size 4 x 5\n}\n").statements;
    assert.ok(wall?.kind === "wall");
    assert.equal(wall.name, null);
    assert.equal(wall.body.length, 1);
  });

  it("gives each statement its whole span and the word to underline", () => {
    const underlined = parse(FULL).statements.map(({ head }) => FULL.slice(head.start, head.end));
    assert.deepEqual(underlined, [
      ..."plan units bed sill head field nose saw mortar grout sealant back plumbing rules allow".split(
        " ",
      ),
    ]);
    for (const { start, end } of parse(FULL).statements) {
      assert.match(FULL.slice(start, end), /^[a-z][^]*[^\s]$/);
    }
  });
});
