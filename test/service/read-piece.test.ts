import assert from "node:assert/strict";
import { stateOf } from "./state-of.js";
import { wallPlan } from "./plans.js";
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

  it("is its place, its size, its cut and its reach", () => {
    const [wall] = stateOf(
      wallPlan("    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n"),
    ).outcome.solved.walls;
    const first = readPiece(wall!, wall!.lays[0]!, 0, new Figures("inch"));
    assert.deepEqual([first.title, first.piece], ["Course 1, piece 1", "back/1/1"]);
    assert.deepEqual(first.facts, [
      ["size", "3 1/8 in x 2 7/8 in"],
      ["cut", "end cut"],
      ["across", "1/8 in to 3 1/4 in"],
      ["up", "1/8 in to 3 in"],
      ["tile", "3 x 6 pressed wall tile, white"],
    ]);
    const second = readPiece(wall!, wall!.lays[0]!, 1, new Figures("inch"));
    assert.deepEqual([second.title, second.facts[1]], ["Course 1, piece 2", ["cut", "whole tile"]]);
  });
});
