import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { PlacesAt } from "../../../src/solver/room/places-at.js";
import { WaysUp } from "../../../src/solver/room/ways-up.js";
import { fieldsOn, SASH } from "./small-room.js";

function waysOf(lay: string, sash = SASH): WaysUp {
  const fields = fieldsOn(sash, lay);
  return new WaysUp(fields, new PlacesAt(fields, "y", true));
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

  it("cost at least what the least of them does", () => {
    const ways = waysOf("across full tile from left");
    const all = ways.heights().map((y) => ways.at(y)[0]!.least);
    assert.ok(all.every((cost) => compareCosts(ways.least!, cost) <= 0));
    assert.equal(ways.leastAt(0, ways.least), null);
  });
});
