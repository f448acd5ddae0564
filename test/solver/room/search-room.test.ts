import assert from "node:assert/strict";
import { searchRoom } from "../../../src/solver/room/search-room.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

const AT_BOTTOM = "whole courses at bottom";
const AT_SILL = "whole courses at sill of sash";

/** What each wish misses, in inches, of the best room for wishes in this order. */
function misses(...wishes: readonly string[]): number[] {
  const plan = askedOf(
    `prefer {\n${wishes.join("\n")}\n}\n${roomWall("back", SASH, "across full tile from left")}`,
  );
  const { walls } = searchRoom(plan, plan.walls, plan.wishes);
  return walls
    .get(0)!
    .cost.slice(1, 1 + wishes.length)
    .map((nm) => nm / 25_400_000);
}

describe("the search over a room", () => {
  it("meets the wish that is ranked first where two collide", () => {
    // The sill at 13 in is 1 in over a course that begins at 12 in.
    assert.deepEqual(misses(AT_BOTTOM, AT_SILL), [0, 1]);
    assert.deepEqual(misses(AT_SILL, AT_BOTTOM), [0, 1]);
  });

  it("lays walls apart that nothing ties", () => {
    const plan = askedOf(
      `prefer {\n equal ends\n}\n${roomWall("one", SASH, "")}${roomWall("two", "", "")}`,
    );
    const { walls, capped } = searchRoom(plan, plan.walls, plan.wishes);
    assert.deepEqual([...walls.keys()].sort(), [0, 1]);
    assert.equal(capped, false);
    // 40 in are ten whole tiles: both ends alike.
    assert.deepEqual([walls.get(0)!.cost[1], walls.get(1)!.cost[1]], [0, 0]);
  });
});
