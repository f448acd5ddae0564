import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Wall } from "../../src/model/index.js";
import { wallFacts } from "../../src/compare/wall-facts.js";
import { edited, told, WALL } from "./wall.js";

function facts(...edits: readonly (readonly [string, string])[]) {
  const [before, after] = [WALL, edited(WALL, ...edits)].map(
    (text) => told(text).solved.walls[0]!.wall,
  );
  return wallFacts(before!, after!, new Map());
}

describe("wallFacts", () => {
  it("tells size, what a side meets, and its joint", () => {
    assert.deepEqual(
      facts(["size 41 3/8", "size 42"], ["bottom counter", "bottom tub"]).map(({ name }) => name),
      ["size", "meets"],
    );
    assert.deepEqual(
      facts(["left wall movement 1/8", "left wall joint 1/8"]).map(({ name }) => name),
      ["soft joint", "joint"],
    );
  });

  it("tells site readings one by one", () => {
    const measured = facts(["bottom counter", "bottom counter measured 0: 0, 10: 1/4"]);
    assert.deepEqual(
      measured.map(({ which }) => which),
      [0, 10 * NM_PER.inch],
    );
  });

  it("takes a corner with a renamed wall for the same", () => {
    const { wall } = told(WALL).solved.walls[0]!;
    const corner = (name: string): Wall => {
      const meets = { kind: "corner", wall: name, lap: "under" } as const;
      return { ...wall, edges: { ...wall.edges, left: { ...wall.edges.left, meets } } };
    };
    const renamed = new Map([["side", "entry"]]);
    assert.deepEqual(wallFacts(corner("side"), corner("entry"), renamed), []);
    assert.equal(wallFacts(corner("side"), corner("entry"), new Map()).length, 1);
  });
});
