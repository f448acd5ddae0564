import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { WaysUp } from "../../../src/solver/room/ways-up.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

function waysOf(lay: string, sash = SASH): WaysUp {
  const plan = askedOf(roomWall("back", sash, lay));
  const [wall] = plan.walls;
  return new WaysUp(new WallFields(wantingOf(plan, []), wall!, wall!.lays[0]!, 0, { cells: 0 }, 1));
}

describe("the heights of a wall's courses", () => {
  it("are the one that is stated", () => {
    const ways = waysOf("up full course from bottom");
    assert.deepEqual([ways.isOpen, ways.heights()], [false, [0]]);
  });

  it("are told by the lowest course that may have a piece", () => {
    const ways = waysOf("up full course from bottom");
    // A course from 13 in stands over courses from 9, 5, 1 and -3 in.
    assert.equal(ways.lowest(13 * NM_PER.inch), -3 * NM_PER.inch);
  });

  it("have whole courses at the bottom, the top, the sill and the head among them where they are open", () => {
    const ways = waysOf("across full tile from left");
    // 0; 30 - 8 x 4; 13 - 4 x 4; 21 - 6 x 4, each in (-4, 0].
    for (const inches of [0, -2, -3]) {
      assert.ok(ways.heights().includes(inches * NM_PER.inch), `${inches}`);
    }
  });

  it("go with an opening that they start from and that may move", () => {
    const moving = "window sash {\n at 12, 13 to 15\n size 16 x 8\n movement 0\n }";
    assert.ok(waysOf("across full tile from left\n up full course over sash", moving).isOpen);
  });

  it("have ways in the order of what they cost at least", () => {
    const moving = "window sash {\n at 12, 13 to 17\n size 16 x 8\n movement 0\n }";
    const ways = waysOf("across full tile from left", moving).at(0);
    assert.ok(ways.length > 1);
    for (const [i, way] of ways.slice(1).entries()) {
      assert.ok(compareCosts(ways[i]!.least, way.least) <= 0);
    }
  });
});
