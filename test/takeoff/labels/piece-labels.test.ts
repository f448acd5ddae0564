import assert from "node:assert/strict";
import type { PieceTable } from "../../../src/solver/index.js";
import { pieceLabels } from "../../../src/takeoff/labels/piece-labels.js";

function table(course: number, column: number, part: number): PieceTable {
  return {
    count: 1,
    bounds: new Float64Array(4),
    course: Int32Array.of(course),
    column: Int32Array.of(column),
    part: Uint8Array.of(part),
    cut: Uint8Array.of(1),
    courseStart: Int32Array.of(0, 1),
    shapes: new Map(),
    visible: new Map(),
  };
}

const numbered = (pieces: PieceTable, idPrefix = "back", below = 0) => ({
  pieces,
  idPrefix,
  below,
});

describe("a piece's label", () => {
  it("is wall, course and place with two digits", () => {
    assert.equal(pieceLabels("B", numbered(table(5, 3, 0)))(0), "B-05-03");
  });

  it("has more digits when it needs them", () => {
    assert.equal(pieceLabels("FO", numbered(table(120, 1234, 0)))(0), "FO-120-1234");
  });

  it("tells the further parts of one tile by letters, like the piece's id", () => {
    assert.equal(pieceLabels("B", numbered(table(5, 3, 1)))(0), "B-05-03b");
    assert.equal(pieceLabels("B", numbered(table(5, 3, 2)))(0), "B-05-03c");
  });

  it("counts courses on over the lays below, and those of a panel behind its name", () => {
    assert.equal(pieceLabels("B", numbered(table(5, 3, 0), "back", 7))(0), "B-12-03");
    assert.equal(pieceLabels("B", numbered(table(1, 3, 0), "back/panel"))(0), "B-panel-01-03");
  });
});
