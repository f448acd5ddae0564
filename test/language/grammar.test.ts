import assert from "node:assert/strict";
import { PlanGrammar } from "../../src/language/grammar.js";
import { parse } from "../../src/language/index.js";
import { FULL } from "./telling.js";

describe("the grammar", () => {
  it("is well defined: Chevrotain's own checks pass", () => {
    assert.doesNotThrow(() => new PlanGrammar({ skipValidations: false, recovers: true }));
  });

  it("follows a plan that has every statement", () => {
    const { statements, problems } = parse(FULL);
    assert.deepEqual(problems, []);
    assert.deepEqual(
      statements.map(({ kind }) => kind),
      [
        ...["plan", "units", "bed", "let", "let", "tile", "trim"],
        ...["saw", "mortar", "grout", "sealant", "wall", "wall", "rules", "allow"],
      ],
    );
  });

  it("lets names be words that have a meaning", () => {
    const text = `units inch
let wall = 5
let x = 2
let to = 1/16
tile tile { 
  face wall x x
  thickness to
}
wall wall {
  size x * wall x x
  left corner under over
  window window {
    at x, to
    size x x x
  }
  lay tile {
    bond stack
    joint to to to
    up full course under under
  }
}`;
    assert.deepEqual(parse(text).problems, []);
  });

  it("lets blocks stand on one line, and a brace on the next", () => {
    const text = `tile a { face 6 x 3
}
tile b
{
  face 6 x 3 }
wall c { size 4 x 5 }
rules { half off, sliver 1 }`;
    assert.deepEqual(parse(text).problems, []);
  });
});
