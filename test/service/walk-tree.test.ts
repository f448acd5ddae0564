import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import {
  expressionsOf,
  leavesOf,
  statementsAt,
  statementsOf,
} from "../../src/service/walk-tree.js";
import { wallPlan } from "./plans.js";

const NESTED = "bed 1\nwall a {\n  size 2 x 3\n  door b {\n    at 4\n  }\n}\nunits mm\n";

/** The expressions of a text's statements as they are written, one statement a row. */
function written(text: string): string[][] {
  return [...statementsOf(parse(text).statements)]
    .map(({ statement }) =>
      expressionsOf(statement).map(({ start, end }) => text.slice(start, end)),
    )
    .filter((row) => row.length > 0);
}

describe("walking a text's tree", () => {
  it("meets blocks before what is in them, in the order of the text", () => {
    const met = [...statementsOf(parse(NESTED).statements)].map(({ statement, blocks }) =>
      [...blocks, statement].map(({ kind }) => kind).join(" "),
    );
    assert.deepEqual(met, ["bed", "wall", "wall size", "wall opening", "wall opening at", "units"]);
  });

  it("finds the statements that hold a place, outermost first", () => {
    const at = (offset: number): string[] =>
      statementsAt(parse(NESTED), offset).map(({ kind }) => kind);
    assert.deepEqual(at(NESTED.indexOf("4")), ["wall", "opening", "at"]);
    assert.deepEqual(at(NESTED.indexOf("size")), ["wall", "size"]);
    assert.deepEqual(at(NESTED.indexOf("a {")), ["wall"]);
    assert.deepEqual(at(NESTED.length), []);
  });

  it("finds every expression that a statement holds", () => {
    const wall =
      "  size 60 x (a + 1)\n  left pan measured 0: b, 30: -1/8 movement c\n  hole v at 8, 44 across 4\n";
    const rows = written(wallPlan("    joint 1/16 to 1/8\n    up joint at 36\n", wall));
    assert.deepEqual(rows.slice(0, 3), [
      ["60", "a + 1"],
      ["0", "b", "30", "-1/8", "c"],
      ["8", "44", "4"],
    ]);
    assert.deepEqual(rows.slice(-2), [["1/16", "1/8"], ["36"]]);
    assert.deepEqual(written("rules { sliver 1, half off }\n"), [["1"]]);
    assert.deepEqual(written('use "a"\nallow cut/sliver "why"\nunits mm\n'), []);
  });

  it("finds the numbers and names that an expression is made of", () => {
    const text = "let a = -(b + 2) * c / 3mm\n";
    const [statement] = parse(text).statements;
    const leaves = expressionsOf(statement!).flatMap((expression) => [...leavesOf(expression)]);
    assert.deepEqual(
      leaves.map(({ start, end }) => text.slice(start, end)),
      ["b", "2", "c", "3mm"],
    );
  });
});
