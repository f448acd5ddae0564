import assert from "node:assert/strict";
import { overlayOf } from "../../src/compare/index.js";
import { drawOverlayHeadless } from "../../src/drawing/headless.js";
import { checkScene } from "../drawing/support/check-scene.js";
import { edited, told, WALL } from "./wall.js";

describe("overlayOf", () => {
  const moved = edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]);
  const scene = overlayOf(told(WALL), told(moved));

  it("gives every piece its fate, and tells the wall's changes over it", () => {
    const [wall] = scene.walls;
    const count = (fate: string | null) =>
      wall!.groups.filter((group) => group.fate === fate).flatMap(({ shapes }) => shapes).length;
    assert.deepEqual([null, "moved", "recut", "fresh", "gone"].map(count), [57, 0, 1, 1, 0]);
    const labels = wall!.base.labels.map(({ text }) => text);
    assert.ok(labels.includes("niche shelf moves right 1 in"));
  });

  it("is plain data, with no text over another", () => {
    assert.deepEqual(JSON.parse(JSON.stringify(scene)), scene);
    checkScene({ ...scene, walls: scene.walls.map(({ base }) => base) }, "the overlay");
  });

  it("draws the same bytes again", () => {
    const again = overlayOf(told(WALL), told(moved));
    assert.equal(drawOverlayHeadless(scene), drawOverlayHeadless(again));
  });

  it("shows walls that changed, and all where none did", () => {
    const two = `${WALL}${WALL.slice(WALL.indexOf("wall back")).replace("wall back", "wall side")}`;
    const one = overlayOf(told(two), told(edited(two, ["at 16 5/8", "at 16 1/2"])));
    assert.equal(one.walls.length, 1);
    assert.equal(overlayOf(told(two), told(two)).walls.length, 2);
  });

  it("shows a wall that is gone", () => {
    const gone = overlayOf(told(WALL), told("units inch"));
    assert.deepEqual([...new Set(gone.walls[0]!.groups.map(({ fate }) => fate))], ["gone"]);
  });
});
