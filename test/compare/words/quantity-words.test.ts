import assert from "node:assert/strict";
import type { PieceQuantity, Quantity } from "../../../src/compare/comparison.js";
import { quantityWords } from "../../../src/compare/words/quantity-words.js";

describe("the words of quantities", () => {
  const tiles = (after: number, boxes: PieceQuantity["boxes"]): Quantity => ({
    kind: "tile",
    name: { before: "field", after: "field" },
    pieces: { before: 90, after },
    boxes,
  });
  const grout = (after: number, bags: number): Quantity => ({
    kind: "grout",
    of: "volume",
    amount: { before: 1_000_000, after },
    pack: "bag",
    packs: { before: 1, after: bags },
  });
  const told = (...quantities: Quantity[]) => quantityWords(quantities, "mm");

  it("say how many more or fewer are needed, and what that is in boxes", () => {
    assert.deepEqual(told(tiles(99, { before: null, after: null })), [
      "tile field: 90 -> 99 tiles needed, 9 more",
    ]);
    assert.deepEqual(told(tiles(81, { before: 9, after: 9 })), [
      "tile field: 90 -> 81 tiles needed, 9 fewer; still 9 boxes",
    ]);
    assert.deepEqual(told(tiles(90, { before: 9, after: 10 })), [
      "tile field: 90 -> 90 tiles needed, as many; boxes 9 -> 10",
    ]);
  });

  it("say materials in one line, where their rounded figures differ or their packs", () => {
    assert.deepEqual(told(grout(2_000_000, 2)), ["grout 1.00 l -> 2.00 l, bags 1 -> 2"]);
    assert.deepEqual(told(grout(1_000_001, 1)), []);
  });

  it("are none where as much is bought", () => {
    assert.deepEqual(told(tiles(90, { before: 9, after: 9 })), []);
  });
});
