import assert from "node:assert/strict";
import { buildPlanarGraph, type Role } from "../../../src/solver/clip/planar-graph.js";
import { ringOf } from "../../../src/solver/index.js";

const square = (left: number, bottom: number, side: number) =>
  ringOf({ left, bottom, right: left + side, top: bottom + side });

function graph(...roles: Role[]) {
  return buildPlanarGraph(roles);
}

describe("a planar graph", () => {
  it("splits edges where they cross, once", () => {
    const { x, from } = graph(
      { ring: square(0, 0, 10), of: "subject" },
      { ring: square(5, 5, 10), of: "obstacle" },
    );
    // Eight corners and two crossings; each crossing makes two edges into four.
    assert.equal(x.length, 10);
    assert.equal(from.length / 2, 12);
  });

  it("keeps edges that lie on each other once, with both windings", () => {
    const { from, step } = graph(
      { ring: square(0, 0, 10), of: "subject" },
      { ring: square(10, 0, 10), of: "obstacle" },
    );
    assert.equal(from.length / 2, 7);
    const shared = step.filter(({ subject, obstacle }) => subject !== 0 && obstacle !== 0);
    assert.equal(shared.length, 1);
    assert.equal(shared[0]!.subject, -shared[0]!.obstacle);
  });

  it("leaves out an edge that separates nothing", () => {
    const { from } = graph(
      { ring: square(0, 0, 10), of: "obstacle" },
      { ring: square(10, 0, 10), of: "obstacle" },
    );
    assert.equal(from.length / 2, 6);
  });

  it("rounds a crossing to the nearest nanometre and keeps an upright's place", () => {
    const { x, y } = graph(
      { ring: [0, 0, 9, 0, 9, 9, 0, 9], of: "subject" },
      { ring: [-9, 2, 18, 3, -9, 20], of: "obstacle" },
    );
    const crossing = x
      .map((at, i) => [at, y[i]!])
      .filter(([at, up]) => at === 9 && up! > 0 && up! < 9);
    // 2 + (9 + 9) / 27 = 2.67
    assert.deepEqual(crossing, [[9, 3]]);
  });
});
