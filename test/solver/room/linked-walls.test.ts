import assert from "node:assert/strict";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { LinkedWalls } from "../../../src/solver/room/linked-walls.js";
import { WallAt } from "../../../src/solver/room/wall-at.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

/** Two walls whose courses are wanted to meet; each with its own height stated, or open. */
function linked(...heights: readonly string[]): LinkedWalls {
  const walls = heights.map((up, i) =>
    roomWall(i === 0 ? "one" : "two", i === 0 ? SASH : "", `across full tile from left\n ${up}`),
  );
  const plan = askedOf(walls.join(""));
  const { origin } = plan.walls[0]!;
  const wanting = wantingOf(plan, [{ wanted: { kind: "courses-meet" }, wall: null, origin }]);
  const at = plan.walls.map(
    (wall) => new WallAt(wanting, wall, wall.lays[0]!, 0, { cells: 0 }, true, 2),
  );
  return new LinkedWalls(wanting, at, [
    { a: 0, b: 1, end: "right", place: 1, isSayable: true, wanted: "courses-meet" },
  ]);
}

const inches = (cost: readonly number[]) => cost[1]! / 25_400_000;

describe("walls whose courses are to meet", () => {
  it("meet where a height is open", () => {
    assert.equal(inches(linked("", "").search(null)!.cost), 0);
    assert.equal(inches(linked("up joint at 1", "").search(null)!.cost), 0);
  });

  it("miss by what stated heights keep apart, the shorter way", () => {
    // 3 in of a module of 4 in are 1 in the other way.
    assert.equal(inches(linked("up joint at 1", "up joint at 2").search(null)!.cost), 1);
    assert.equal(inches(linked("up joint at 1", "up joint at 4").search(null)!.cost), 1);
  });

  it("cost no less than they cost at least, and are not found under a bar that they don't reach", () => {
    const walls = linked("", "");
    const leastCost = walls.leastCost(null);
    const { cost } = walls.search(null)!;
    assert.ok(compareCosts(leastCost, cost) <= 0);
    assert.equal(linked("", "").search(cost), null);
  });

  it("aren't laid at heights that cost no less than is hoped for", () => {
    const { cost } = linked("", "").search(null)!;
    const hopeless = linked("", "");
    assert.equal(
      hopeless.search(
        null,
        cost.map(() => 0),
      ),
      null,
    );
    assert.equal(hopeless.weighed, 0);
    const hopeful = linked("", "").search(
      null,
      cost.map((number, i) => (i === 1 ? 1 : number)),
    );
    assert.deepEqual(hopeful!.cost, cost);
  });
});
