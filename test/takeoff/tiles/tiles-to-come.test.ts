import assert from "node:assert/strict";
import { takeText } from "../../support/takeoff-text.js";

/** Tile of 100 x 100 with joints of 2 from 10 on: six of them and 50 in a course of stack bond, and five courses. */
function plan(set: string, tile = ""): string {
  return `units mm
tile field {
  face 100 x 100
  thickness 8
${tile}}
wall back {
  size 682 x 518
  left wall movement 10
  right wall movement 10
  bottom floor movement 4
  top ceiling movement 6
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
${set}  }
}
`;
}

const taken = (set: string, tile = "") => takeText(plan(set, tile)).taken.tiles[0]!;

describe("what is still to come of a tile", () => {
  it("is told only where some of it is set", () => {
    assert.equal(taken("").toCome, null);
  });

  it("is what is needed less the tiles that are on the wall, whole or in part", () => {
    // 30 whole, and five ends of 50: a tile makes one, since the saw takes 3/32 in of the other.
    const whole = taken("");
    assert.deepEqual([whole.whole, whole.cut.length, whole.needed], [30, 5, 35]);
    const { needed, toCome } = taken("    set courses 1 to 2\n");
    assert.equal(needed, 35);
    assert.deepEqual(
      [toCome!.used, toCome!.fromUsed, toCome!.needed, toCome!.bought],
      [14, 0, 21, 21],
    );
  });

  it("counts a tile as used of which one piece is set, and the pieces that its rest is for", () => {
    const thin = plan("    set courses 1 to 2\n").replace("size 682", "size 672");
    // Ends of 40: two a tile, so five come from three: 1 with 4, 2 with 3, and 5 alone.
    const { needed, toCome } = takeText(thin).taken.tiles[0]!;
    assert.deepEqual([needed, toCome!.used, toCome!.fromUsed, toCome!.needed], [33, 14, 2, 19]);
  });

  it("is bought with its own breakage and boxes", () => {
    const stock = "  box 10\n  breakage 10%\n  spares 2\n";
    const { breakage, boxes, toCome } = taken("    set courses 1 to 2\n", stock);
    assert.deepEqual([breakage, boxes!.count], [4, 5]);
    // 21, 3 for breakage, 2 spares.
    assert.deepEqual([toCome!.breakage, toCome!.boxes], [3, { count: 3, of: 10, over: 4 }]);
  });

  it("is nothing more where all is set, but what the plan wants of spares", () => {
    const { toCome } = taken("    set courses 1 to 5\n", "  spares 2\n");
    assert.deepEqual([toCome!.used, toCome!.needed, toCome!.bought], [35, 0, 2]);
  });
});
