import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { settle } from "../../src/solver/room/index.js";
import { settleWall } from "../../src/solver/wall-settled.js";
import { foundFor, lonePanel } from "./lone-panel.js";

const IN = NM_PER.inch;

describe("a wall for whose lays all was found", () => {
  it("has what each lay settles where that was found", () => {
    const niche = "niche n {\n at 8 to 12, 18 to 22\n size 8 x 8\n movement 1/8\n }";
    const { wall, lone } = lonePanel({ openings: niche, height: "36 to 40" });
    const field = lone("field");
    const at = { x: 9 * IN, y: 20 * IN };
    const moved = settle(field.wall, { stop: 39 * IN, places: [at] });
    const found = new Map([
      [lone("dado"), foundFor(lone("dado"), IN / 8)],
      [field, foundFor(field, IN / 8, moved)],
    ]);
    const { wall: standing, starts } = settleWall(wall, found);
    assert.deepEqual([standing.openings[0]!.at, standing.size.up], [at, 39 * IN]);
    assert.deepEqual([...starts.keys()], ["dado", "field"]);
  });

  it("is the wall itself where nothing of it is free", () => {
    const { wall, lone } = lonePanel({});
    const found = new Map([[lone("dado"), foundFor(lone("dado"), IN / 8)]]);
    assert.equal(settleWall(wall, found).wall, wall);
  });

  it("has starts that speak of openings where they stand now", () => {
    const niche = "niche n {\n at 8 to 12, 18\n size 8 x 8\n movement 1/8\n }";
    const { wall, lone } = lonePanel({ openings: niche });
    const field = lone("field");
    const moved = settle(field.wall, {
      stop: wall.size.up,
      places: [{ x: 10 * IN, y: 18 * IN }],
    });
    const { chosen } = foundFor(field, IN / 8);
    const centre = { on: "opening", opening: moved.openings[0]! } as const;
    const across = { kind: "tile", centre } as const;
    const found = new Map([[field, { wall: moved, chosen: { ...chosen, across } }]]);
    const { wall: standing, starts } = settleWall(wall, found);
    const start = starts.get("field")!.across;
    assert.ok("centre" in start && start.centre.on === "opening");
    assert.equal(start.centre.opening, standing.openings[0]);
  });
});
