import assert from "node:assert/strict";
import { sideBySide } from "../../src/compare/index.js";
import { checkScene } from "../drawing/support/check-scene.js";
import { edited, told, WALL } from "./wall.js";

describe("sideBySide", () => {
  const moved = edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]);
  const scene = sideBySide(told(WALL), told(moved));

  it("shows each wall that changed as it was and as it is", () => {
    assert.deepEqual(
      scene.walls.map(({ title }) => title),
      ["Back wall, before", "Back wall, after"],
    );
    assert.ok(scene.walls[0]!.at.x < scene.walls[1]!.at.x);
    assert.equal(scene.walls[0]!.at.y, scene.walls[1]!.at.y);
  });

  it("marks the findings of each on its own wall", () => {
    assert.equal(scene.walls[0]!.marks.length, 0);
    assert.ok(scene.walls[1]!.marks.length > 0);
    assert.ok(scene.walls[1]!.marks.every(({ piece }) => piece.startsWith("back-after/")));
  });

  it("keeps the laws of every picture", () => {
    checkScene(scene, "both");
  });

  it("shows a new wall once", () => {
    assert.equal(sideBySide(told("units inch"), told(WALL)).walls.length, 1);
  });
});
