import assert from "node:assert/strict";
import {
  cutOf,
  doublePieceArea,
  pieceId,
  pieceShape,
  ringOf,
  visibleBounds,
  visibleShapes,
  type PieceTable,
} from "../../src/solver/index.js";

const seen = { outline: ringOf({ left: 70, bottom: 0, right: 122, top: 30 }), holes: [] };
const table: PieceTable = {
  count: 3,
  bounds: Float64Array.of(0, 0, 60, 30, 62, 0, 122, 30, 124, 0, 184, 30),
  course: Int32Array.of(7, 7, 7),
  column: Int32Array.of(1, 2, 2),
  part: Uint8Array.of(0, 0, 1),
  cut: Uint8Array.of(0, 1, 4),
  courseStart: Int32Array.of(0, 3),
  shapes: new Map([[2, { outline: [124, 0, 184, 0, 184, 30], holes: [] }]]),
  visible: new Map([
    [1, { shapes: [seen] }],
    [2, { shapes: [] }],
  ]),
};

describe("a piece table", () => {
  it("names a piece by wall, course and column, and a tile's further parts by a letter", () => {
    assert.equal(pieceId({ pieces: table, idPrefix: "back", below: 0 }, 1), "back/7/2");
    assert.equal(pieceId({ pieces: table, idPrefix: "back", below: 0 }, 2), "back/7/2b");
  });

  it("gives a plain piece its bounds as its shape", () => {
    assert.deepEqual(pieceShape(table, 0).outline, [0, 0, 60, 0, 60, 30, 0, 30]);
    assert.equal(doublePieceArea(table, 0), 3600n);
    assert.equal(doublePieceArea(table, 2), 1800n);
    assert.equal(cutOf(table, 2), "notch");
  });

  it("knows what is seen of a piece: all, a part, or nothing", () => {
    assert.equal(visibleShapes(table, 0).length, 1);
    assert.deepEqual(visibleBounds(table, 0), { left: 0, bottom: 0, right: 60, top: 30 });
    assert.deepEqual(visibleBounds(table, 1), { left: 70, bottom: 0, right: 122, top: 30 });
    assert.equal(visibleBounds(table, 2), null);
  });
});
