import assert from "node:assert/strict";
import { WallAt } from "../../../src/solver/room/wall-at.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { WallWeighing } from "../../../src/solver/room/wall-weighing.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, roomWall, SASH } from "./small-room.js";

const plan = askedOf(
  `prefer {\n few cuts\n}\n${roomWall("back", SASH, "across full tile from left\n up full course from bottom")}`,
);
const [wall] = plan.walls;
const wanting = wantingOf(plan, plan.wishes);
const lay = wall!.lays[0]!;
const fields = new WallFields(wanting, wall!, lay, 0, { cells: 0 }, 1);
const weighed = (bar: readonly number[] | null) =>
  new WallWeighing(fields, fields.at(fields.drawn), { x: 0, y: 0 }, bar).cost();

describe("the weighing of a wall", () => {
  it("counts its cuts by hand, and its tiles", () => {
    // The top course is 2 in high: 10 cuts. The window from 12 to 28 and from 13 to 21 cuts four tiles
    // to 1 in under it and four to 3 in over it. Of 8 courses of 10 tiles it takes four whole.
    const [empty, cuts, , , , , tiles] = weighed(null)!;
    assert.deepEqual([empty, cuts, tiles], [0, 18, 76]);
  });

  it("comes to what the best way at that height comes to", () => {
    const best = new WallAt(wanting, wall!, lay, 0, { cells: 0 }, true, 1).bestAt(0, null)!;
    assert.deepEqual(weighed(null), best.cost);
  });

  it("stops where it is sure to cost more than a bar", () => {
    const cost = weighed(null)!;
    assert.deepEqual(weighed(cost), cost);
    assert.equal(weighed(cost.map((number, i) => (i === 1 ? number - 1 : number))), null);
  });
});
