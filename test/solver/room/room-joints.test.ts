import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { criticalJoints } from "../../../src/solver/choose/critical-joints.js";
import { roomJoints } from "../../../src/solver/room/room-joints.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

const plan = askedOf(
  roomWall("one", SASH, "", "1/16 to 1/8") + roomWall("two", "", "", "1/16 to 1/8"),
);
const ends = plan.walls.map((wall) => {
  const [lay] = wall.lays;
  const at = (joint: number) => fieldOf(plan, wall, lay!, joint);
  return { least: at(lay!.joint.min), most: at(lay!.joint.max) };
});

describe("the critical joints of a room", () => {
  it("are those of its one wall", () => {
    const [one] = ends;
    assert.deepEqual(roomJoints([one!]).joints, criticalJoints(one!.least, one!.most).joints);
  });

  it("have those of each wall among them, in rising order from end to end of the range", () => {
    const { joints } = roomJoints(ends);
    for (const { least, most } of ends) {
      for (const joint of criticalJoints(least, most).joints) assert.ok(joints.includes(joint));
    }
    assert.deepEqual(
      joints,
      [...joints].sort((a, b) => a - b),
    );
    assert.deepEqual([joints[0], joints.at(-1)], [25_400_000 / 16, 25_400_000 / 8]);
  });
});
