import assert from "node:assert/strict";
import { startOf } from "../../../src/solver/choose/weigh.js";
import { WallAt } from "../../../src/solver/room/wall-at.js";
import { weighWall } from "../../../src/solver/room/weigh-wall.js";
import { fieldsOn, SASH } from "./small-room.js";

const fields = fieldsOn(
  SASH,
  "across full tile from left\n up full course from bottom",
  "prefer {\n few cuts\n}\n",
);
const { wanting, wall, lay, first } = fields;
const weighed = (bar: readonly number[] | null) =>
  weighWall(fields, first, startOf(first.own, 0, 0), bar);

describe("the weighing of a wall", () => {
  it("counts its cuts by hand, and its tiles", () => {
    // The top course is 2 in high: 10 cuts. The window from 12 to 28 and from 13 to 21 cuts four tiles
    // to 1 in under it and four to 3 in over it. Of 8 courses of 10 tiles it takes four whole.
    const [empty, cuts, , , , , tiles] = weighed(null)!;
    assert.deepEqual([empty, cuts, tiles], [0, 18, 76]);
  });

  it("comes to what the best way at that height comes to", () => {
    const best = new WallAt(wanting, wall, lay, 0, { cells: 0 }, true, 1).bestAt(0, null)!;
    assert.deepEqual(weighed(null), best.cost);
  });

  it("stops where it is sure to cost more than a bar", () => {
    const cost = weighed(null)!;
    assert.deepEqual(weighed(cost), cost);
    assert.equal(weighed(cost.map((number, i) => (i === 1 ? number - 1 : number))), null);
  });
});
