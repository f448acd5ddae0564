import assert from "node:assert/strict";
import type { Tile } from "../../../src/model/index.js";
import { purchaseOf } from "../../../src/takeoff/tiles/purchase.js";
import { cutWall } from "../../support/cut-wall.js";

function tile(...stock: string[]): Tile {
  return cutWall({ size: "202 x 50" }, { tile: stock }).plan.tiles[0]!;
}

describe("what to buy of a tile", () => {
  it("is what is needed and no more, when the plan states nothing", () => {
    assert.deepEqual(purchaseOf(tile(), 41), {
      needed: 41,
      breakage: 0,
      spares: 0,
      boxes: null,
      bought: 41,
      cost: null,
    });
  });

  it("is whole boxes, and says what the last one has over", () => {
    const { boxes, bought } = purchaseOf(tile("box 12"), 41);
    assert.deepEqual([boxes, bought], [{ count: 4, of: 12, over: 7 }, 48]);
    assert.deepEqual(purchaseOf(tile("box 12"), 48).boxes, { count: 4, of: 12, over: 0 });
  });

  it("has the breakage that is stated, rounded up to a tile, and the spares", () => {
    const bought = purchaseOf(tile("breakage 3%", "spares 6", "box 10"), 101);
    assert.deepEqual([bought.breakage, bought.spares, bought.bought], [4, 6, 120]);
    assert.equal(purchaseOf(tile("breakage 3%"), 100).breakage, 3);
  });

  it("costs by the box or by the piece, exactly", () => {
    assert.deepEqual(purchaseOf(tile("box 12", "price 42.50 a box"), 41).cost, {
      hundredths: 17000,
    });
    assert.deepEqual(purchaseOf(tile("price 0.85 a piece"), 41).cost, { hundredths: 3485 });
    assert.deepEqual(purchaseOf(tile("box 12", "price 0.85 a piece"), 41).cost, {
      hundredths: 4080,
    });
  });

  it("costs nothing that can be told when a box's price is given without its count", () => {
    const price = { hundredths: 4250, per: "box" } as const;
    assert.equal(purchaseOf({ ...tile(), price }, 41).cost, null);
  });
});
