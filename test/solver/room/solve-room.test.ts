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

  it("names openings in its starts where they come to stand", () => {
    const wishes = "prefer {\n whole courses at sill of sash\n centre on sash\n}\n";
    const plan = askedOf(
      `${wishes}${roomWall("back", MOVING.replace("12 to 17", "12 1/4 to 13 1/4"), "")}`,
    );
    const { plan: laid, chosen } = layRoom(plan, plan.walls, plan.wishes);
    const { across, up } = chosen.get("back")!;
    const [sash] = laid.walls[0]!.openings;
    assert.ok(up.kind === "at-opening" && up.opening === sash);
    assert.ok("centre" in across && across.centre.on === "opening");
    assert.equal(across.centre.opening, sash);
  });
});
