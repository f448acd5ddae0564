import assert from "node:assert/strict";
import { isRoom, layRoom } from "../../../src/solver/room/solve-room.js";
import { askedOf, MOVING, roomWall, SASH } from "./small-room.js";

const LAID = "across full tile from left\n up full course from bottom";

describe("a room that is laid together", () => {
  it("is one with wishes, or with something that is left free", () => {
    assert.equal(isRoom(askedOf(roomWall("back", SASH, LAID))), false);
    assert.equal(isRoom(askedOf(roomWall("back", MOVING, LAID))), true);
    assert.equal(isRoom(askedOf(`prefer {\n few cuts\n}\n${roomWall("back", SASH, LAID)}`)), true);
  });

  it("keeps what is stated, and tells of no choice there", () => {
    const plan = askedOf(`prefer {\n few cuts\n}\n${roomWall("back", SASH, LAID)}`);
    const [asked] = plan.walls;
    const { wall, chosen } = layRoom(plan, plan.walls, plan.wishes).walls.get(asked!)!;
    const { across, up } = asked!.lays[0]!;
    assert.deepEqual([chosen.across, chosen.up, chosen.choice], [across, up, null]);
    assert.equal(wall, asked);
  });

  it("settles what is free within its range, here on the joints: no tile beside it is cut", () => {
    const plan = askedOf(`prefer {\n few cuts\n}\n${roomWall("back", MOVING, LAID)}`);
    const { wall } = layRoom(plan, plan.walls, plan.wishes).walls.get(plan.walls[0]!)!;
    const inches = wall.openings[0]!.at.x / 25_400_000;
    assert.ok(inches === 12 || inches === 16, `${inches}`);
  });

  it("names openings in its starts where they come to stand", () => {
    const wishes = "prefer {\n whole courses at sill of sash\n centre on sash\n}\n";
    const plan = askedOf(
      `${wishes}${roomWall("back", MOVING.replace("12 to 17", "12 1/4 to 13 1/4"), "")}`,
    );
    const { wall, chosen } = layRoom(plan, plan.walls, plan.wishes).walls.get(plan.walls[0]!)!;
    const { across, up } = chosen;
    const [sash] = wall.openings;
    assert.ok(up.kind === "at-opening" && up.opening === sash);
    assert.ok("centre" in across && across.centre.on === "opening");
    assert.equal(across.centre.opening, sash);
  });
});
