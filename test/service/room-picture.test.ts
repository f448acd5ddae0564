import assert from "node:assert/strict";
import { isJoined, roomPicture } from "../../src/service/room-picture.js";
import { exampleText } from "../support/examples.js";
import { stateOf } from "./state-of.js";
import { wallPlan } from "./plans.js";

describe("the picture of the room", () => {
  it("is there where a corner joins two walls of the plan", () => {
    const joined = (text: string): boolean => isJoined(stateOf(text).outcome.solved);
    assert.equal(joined(exampleText("room.tileplan")), true);
    assert.equal(joined(wallPlan("    joint 1/16\n")), false);
    const lone = wallPlan("    joint 1/16\n").replace(
      "right wall movement 1/8",
      "right corner gone over movement 1/8",
    );
    assert.equal(joined(lone), false, "the wall at its corner isn't in the plan");
  });

  it("has the walls from left to right, with what findings speak of marked", () => {
    const { solved, scene } = stateOf(
      exampleText("room.tileplan").replace("at 9 7/16, 35 3/16", "at 9, 35 3/16"),
    ).outcome;
    const room = roomPicture(solved, scene());
    assert.deepEqual(
      room.walls.map(({ name }) => name),
      ["plumbing", "back", "end", "pier"],
    );
    const end = room.walls.find(({ name }) => name === "end")!;
    assert.ok(end.marks.length > 0);
    assert.deepEqual(end.marks, scene().walls.find(({ name }) => name === "end")!.marks);
  });
});
