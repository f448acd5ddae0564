import assert from "node:assert/strict";
import { boxesOverlap } from "../../../src/drawing/labels.js";
import { placeWalls } from "../../../src/drawing/scene/place-walls.js";
import { roomOf } from "../../../src/drawing/scene/wall-scene.js";
import { planOf, sceneOf, wallText } from "../support/scene-of.js";

describe("placing walls", () => {
  const names = ["a", "b", "c", "d"];
  const { walls, em } = sceneOf(planOf(names.map((name) => wallText("", name)).join("\n")));

  it("puts those of a row on one level line and rows below each other, in order", () => {
    const placed = placeWalls(walls, { em, rows: [2, 2] }).walls;
    assert.deepEqual(
      placed.map(({ name }) => name),
      names,
    );
    const levels = placed.map(({ at }) => at.y);
    assert.equal(levels[0], levels[1]);
    assert.equal(levels[2], levels[3]);
    assert.ok(levels[2]! > levels[0]!);
  });

  it("gives each the room that it takes", () => {
    for (const rows of [[4], [2, 2], [1, 3], [1, 1, 1, 1]]) {
      const rooms = placeWalls(walls, { em, rows }).walls.map((wall) => {
        const { left, right, top, bottom } = roomOf(wall, em);
        const { x, y } = wall.at;
        return { left: left + x, right: right + x, top: top + y, bottom: bottom + y };
      });
      for (const [i, one] of rooms.entries()) {
        for (const other of rooms.slice(i + 1)) assert.ok(!boxesOverlap(one, other));
      }
    }
  });
});
