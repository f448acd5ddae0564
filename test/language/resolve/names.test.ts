import assert from "node:assert/strict";
import { planOf, resolveText, told } from "../telling.js";

const tile = (name: string, face: number): string =>
  `tile ${name} {\n  face ${face} x ${face}\n  thickness 1\n}\n`;

describe("a name", () => {
  it("declared twice is told with the place of the first, which stands", () => {
    const text = tile("field", 3) + tile("field", 4);
    const [diagnostic, ...others] = resolveText(text).diagnostics;
    assert.equal(others.length, 0);
    assert.equal(diagnostic!.code, "plan/name-twice");
    assert.equal(diagnostic!.range.start.line, 4);
    assert.equal(diagnostic!.related![0]!.range.start.line, 0);
    assert.deepEqual(
      planOf(text).tiles.map(({ face }) => face.up),
      [3 * 25_400_000],
    );
  });

  it("may be given to a tile, a trim, a wall and a length at once", () => {
    const text = `let a = 1\n${tile("a", 3)}trim a {\n  face 1 x 1\n  thickness 1\n}\nwall a {\n  size 4 x 5\n}\n`;
    assert.deepEqual(told(text), []);
  });

  it("that is unknown isn't told where a declaration has lost its name", () => {
    const lay = "wall a {\n  size 4 x 5\n  lay field {\n    bond stack\n    joint 0\n  }\n}\n";
    assert.deepEqual(told(tile("feld", 3) + lay), [
      "plan/name-unknown [field] found no tile called `field`; did you mean `feld`?",
    ]);
    assert.deepEqual(told(tile("9", 3) + lay), ["syntax/unexpected [9] found `9`, wanted a name"]);
  });

  it("that an object has by nature is unknown like any other", () => {
    assert.deepEqual(told("bed constructor\n"), [
      "plan/name-unknown [constructor] found no length called `constructor`",
    ]);
    assert.deepEqual(told("rules {\n  toString 1\n}\n").length, 1);
    assert.deepEqual(told("let __proto__ = 1\nbed __proto__\n").length, 2);
  });
});
