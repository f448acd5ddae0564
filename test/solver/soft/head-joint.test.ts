import assert from "node:assert/strict";
import { headJointNear } from "../../../src/solver/soft/head-joint.js";
import { layWall } from "../../../src/solver/lay-wall.js";
import { asSettled } from "../../../src/solver/start.js";
import type { Lay } from "../../../src/model/index.js";
import { area, layOf, past, wallOf } from "../several-lays.js";

/** The lays of a wall that is tiled from 3 to 997: tiles of 100 from 3 on, joints of 2 from 103, 205, 307 ... on. */
function laid(...lays: Lay[]) {
  const { plan, wall } = wallOf(lays);
  return layWall(plan, wall, ({ lay }) => {
    const { across, up } = asSettled(lay);
    return { joint: lay.joint.min, across: across!, up: up!, choice: null };
  }).lays;
}

const near = (x: number, ...lays: Lay[]) => headJointNear(laid(...lays), x);

describe("the head joint nearest to a place", () => {
  it("is that whose middle is nearest; of two as near, the left one", () => {
    const field = layOf("field");
    assert.deepEqual(near(104, field), { from: 103, to: 105 });
    assert.deepEqual(near(154, field), { from: 103, to: 105 });
    assert.deepEqual(near(155, field), { from: 103, to: 105 });
    assert.deepEqual(near(156, field), { from: 205, to: 207 });
  });

  it("has tile at both its sides", () => {
    const field = layOf("field");
    assert.deepEqual(near(4, field), { from: 103, to: 105 });
    // The last one begins at 919; the tile after it is cut at 997.
    assert.deepEqual(near(996, field), { from: 919, to: 921 });
    assert.equal(
      near(50, layOf("one", { area: area({ right: { kind: "place", at: 90 } }) })),
      "no-head-joint",
    );
  });

  it("is beside no lay", () => {
    assert.equal(near(3, layOf("field")), "no-head-joint");
    assert.equal(near(1200, layOf("field")), "no-head-joint");
  });

  it("goes through all courses: in a running bond there is none, unless it has one course", () => {
    const bond = { kind: "running", p: 1, q: 2 } as const;
    assert.equal(near(500, layOf("field", { bond })), "shifted");
    const liner = layOf("liner", { bond, area: area({}, { courses: 1 }) });
    assert.deepEqual(near(500, liner), { from: 511, to: 513 });
  });

  it("goes through all lays of a block, where their joints are in line", () => {
    const low = layOf("low", { area: area({}, { courses: 3 }) });
    const high = layOf("high", { area: area({ bottom: past("low") }) });
    assert.deepEqual(near(500, low, high), { from: 511, to: 513 });
    const narrow = { ...high, tile: { ...high.tile, face: { across: 60, up: 50 } } };
    assert.equal(near(500, low, narrow), "out-of-line");
    // 3 + 9 x 52 = 471 = 3 + 4 x 102 + 60: the joint at 409 is one of both.
    const half = { ...high, tile: { ...high.tile, face: { across: 49, up: 50 } } };
    assert.deepEqual(near(410, low, half), { from: 409, to: 411 });
  });
});
