import assert from "node:assert/strict";
import { extremesOf } from "../../../src/solver/room/extremes.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, MOVING, roomWall, SASH } from "./small-room.js";

function leftsOf(sash: string, direction: "x" | "y"): number[] {
  const plan = askedOf(roomWall("back", sash, "across full tile from left"));
  const [wall] = plan.walls;
  const fields = new WallFields(wantingOf(plan, []), wall!, wall!.lays[0]!, 0, { cells: 0 }, 1);
  return extremesOf(fields, direction).map(({ own }) => own.boxes[0]!.left / 25_400_000);
}

describe("the extremes of what is free on a wall", () => {
  it("are the wall as it is drawn where nothing is free", () => {
    assert.deepEqual(leftsOf(SASH, "x"), [12]);
    assert.deepEqual(leftsOf(MOVING, "y"), [12]);
  });

  it("have both ends of a range, and nothing outside it", () => {
    const lefts = leftsOf(MOVING, "x");
    assert.ok(lefts.includes(12) && lefts.includes(17), lefts.join(" "));
    assert.ok(lefts.every((left) => left >= 12 && left <= 17));
  });
});
