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

  it("keeps the layout that it begins with where none misses the first wish by less", () => {
    const plan = askedOf(
      `prefer {\n${AT_BOTTOM}\n${AT_SILL}\n}\n${roomWall("back", SASH, "across full tile from left\n up joint at 0")}`,
    );
    const than = searchRoom(plan, plan.walls, plan.wishes);
    assert.ok(than.clusters[0]!.cost[2]! > 0);
    const again = searchRoom(plan, plan.walls, [...plan.wishes].reverse(), {
      nearer: { than, place: 2 },
    });
    assert.equal(again.clusters[0], than.clusters[0]);
    assert.equal(again.walls.get(0), than.walls.get(0));
  });

  it("doesn't look at walls again that miss nothing of the first wish", () => {
    const plan = askedOf(
      `prefer {\n${AT_BOTTOM}\n${AT_SILL}\n}\n${roomWall("one", "", "across full tile from left")}${roomWall("back", SASH, "across full tile from left")}`,
    );
    const than = searchRoom(plan, plan.walls, plan.wishes);
    assert.deepEqual(
      than.clusters.map((laid) => laid!.cost[2]! > 0),
      [false, true],
    );
    const nearer = { than, place: 2 };
    const first = searchRoom(plan, plan.walls, [...plan.wishes].reverse(), { nearer });
    assert.equal(first.clusters[0], than.clusters[0]);
    assert.equal(first.clusters[1]!.cost[1], 0);
    const alone = searchRoom(plan, plan.walls, [...plan.wishes].reverse());
    assert.ok(first.weighed < alone.weighed);
    assert.deepEqual(
      first.clusters.map((laid, i) => (i === 1 ? laid!.cost : null)),
      alone.clusters.map((laid, i) => (i === 1 ? laid!.cost : null)),
    );
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
