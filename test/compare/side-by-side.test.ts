import assert from "node:assert/strict";
import { sideBySide } from "../../src/compare/index.js";
import { checkScene } from "../drawing/support/check-scene.js";
import { edited, told, WALL } from "./wall.js";

describe("sideBySide", () => {
  const moved = edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]);
  const [sides] = sideBySide(told(WALL), told(moved));
  const { scene } = sides!;

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
    const [alone] = sideBySide(told("units inch"), told(WALL));
    assert.equal(alone?.scene.walls.length, 1);
  });

  it("gives each wall that changed a picture of its own", () => {
    const two = `${WALL}${WALL.slice(WALL.indexOf("wall back")).replace("wall back", "wall side")}`;
    const wallsOf = (after: string) => sideBySide(told(two), told(after)).map(({ wall }) => wall);
    assert.deepEqual(wallsOf(edited(two, ["at 16 5/8", "at 16 1/2"])), ["back"]);
    assert.deepEqual(wallsOf(two), ["back", "side"]);
  });
});
