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
    const { chosen, plan: laid } = layRoom(plan, plan.walls, plan.wishes);
    const back = chosen.get("back")!;
    assert.deepEqual(
      [back.across, back.up, back.choice],
      [plan.walls[0]!.lays[0]!.across, plan.walls[0]!.lays[0]!.up, null],
    );
    assert.deepEqual(laid.walls, plan.walls);
  });

  it("settles what is free within its range, here on the joints: no tile beside it is cut", () => {
    const plan = askedOf(`prefer {\n few cuts\n}\n${roomWall("back", MOVING, LAID)}`);
    const { plan: laid } = layRoom(plan, plan.walls, plan.wishes);
    const inches = laid.walls[0]!.openings[0]!.at.x / 25_400_000;
    assert.ok(inches === 12 || inches === 16, `${inches}`);
  });
});
