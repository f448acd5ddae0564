import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { readPiece } from "../../src/service/read-piece.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("what a setter says of a piece", () => {
  it("is told of every piece of the examples, in the units that are wanted", () => {
    for (const name of ["back-wall.tileplan", "three-walls.tileplan"]) {
      const { solved } = run(exampleText(name), exampleSource(name));
      for (const wall of solved.walls) {
        const lay = wall.lays[0]!;
        for (let i = 0; i < lay.pieces.count; i++) {
          const read = readPiece(wall, lay, i, new Figures("mm"));
          assert.match(read.title, /^Course \d+, piece \d+$/);
          const facts = Object.fromEntries(read.facts);
          assert.match(facts.size!, / mm x .* mm$/);
          assert.equal("seen" in facts, lay.pieces.visible.has(i));
        }
      }
    }
  });
});
