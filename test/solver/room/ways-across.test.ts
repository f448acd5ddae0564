import assert from "node:assert/strict";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { waysAcross } from "../../../src/solver/room/ways-across.js";
import { askedOf, MOVING, roomWall, SASH } from "./small-room.js";

function waysOf(sash: string, lay: string) {
  const plan = askedOf(roomWall("back", sash, lay));
  const [wall] = plan.walls;
  const fields = new WallFields(wantingOf(plan, []), wall!, wall!.lays[0]!, 0, { cells: 0 }, 1);
  return waysAcross(fields);
}

describe("the ways to start across a wall", () => {
  it("are the one that is stated", () => {
    const ways = waysOf(SASH, "across full tile from left");
    assert.deepEqual(
      ways.map(({ x, places }) => [x, places]),
      [[0, []]],
    );
  });

  it("are looked at by what they cost at least, the least first", () => {
    const ways = waysOf(SASH, "up full course from bottom");
    assert.ok(ways.length > 3);
    for (const [i, way] of ways.slice(1).entries()) {
      assert.ok(compareCosts(ways[i]!.least, way.least) <= 0);
    }
  });

  it("have a place for what may move, within its range", () => {
    const ways = waysOf(MOVING, "across full tile from left");
    const [min, max] = [12 * 25_400_000, 17 * 25_400_000];
    assert.ok(ways.some(({ places }) => places[0] === min));
    assert.ok(ways.every(({ places: [x] }) => x! >= min && x! <= max));
  });
});
