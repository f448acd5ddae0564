import assert from "node:assert/strict";
import { pieceBounds } from "../../src/solver/index.js";
import { PieceBuilder } from "../../src/solver/piece-builder.js";

const row = {
  left: 5,
  bottom: 0,
  width: 60,
  top: 30,
  module: 62,
  many: 3,
  course: 1,
  column: 1,
  cut: 0,
};
const piece = {
  bounds: { left: 191, bottom: 0, right: 200, top: 30 },
  course: 1,
  column: 4,
  part: 0,
  cut: 1,
  shape: null,
  visible: null,
};

describe("a piece table being filled", () => {
  it("holds rows of tiles a module apart and single pieces, past its first capacity", () => {
    const builder = new PieceBuilder(1);
    builder.beginCourse();
    builder.addRow(row);
    builder.add(piece);
    const table = builder.build();
    assert.equal(table.count, 4);
    assert.deepEqual(pieceBounds(table, 2), { left: 129, bottom: 0, right: 189, top: 30 });
    assert.deepEqual([...table.column], [1, 2, 3, 4]);
    assert.deepEqual([...table.courseStart], [0, 4]);
  });

  it("keeps an empty course between others and drops empty ones at the end", () => {
    const builder = new PieceBuilder(8);
    builder.beginCourse();
    builder.add(piece);
    builder.beginCourse();
    builder.beginCourse();
    builder.add(piece);
    builder.beginCourse();
    assert.deepEqual([...builder.build().courseStart], [0, 1, 1, 2]);
  });

  it("forgets the courses begun when it starts again", () => {
    const builder = new PieceBuilder(8);
    builder.beginCourse();
    builder.restart();
    builder.beginCourse();
    builder.add(piece);
    assert.deepEqual([...builder.build().courseStart], [0, 1]);
  });
});
