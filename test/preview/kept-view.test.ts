import assert from "node:assert/strict";
import { keepView, readKeptView, recallView } from "../../src/preview/kept-view.js";
import type { View } from "../../src/preview/view.js";
import { TWO_WALLS, twoWalls } from "./support/show-plan.js";

describe("what is kept over a reload", () => {
  const { scene } = twoWalls(1);
  const side = scene.walls.find((wall) => wall.name === "side")!;
  const view: View = { x: side.at.x + 100, y: side.at.y - 300, scale: 2, hold: "free" };

  it("gives the same view back in the same picture", () => {
    const kept = keepView(view, scene, "side", ["cuts"]);
    assert.equal(kept.from, "side");
    assert.deepEqual(recallView(kept, scene), view);
    assert.deepEqual(readKeptView(JSON.parse(JSON.stringify(kept))), kept);
  });

  it("gives the same place of the wall in another picture", () => {
    const wider = twoWalls(2, TWO_WALLS.replace("size 60 x 48", "size 90 x 48")).scene;
    const there = wider.walls.find((wall) => wall.name === "side")!;
    assert.notEqual(there.at.x, side.at.x);
    const recalled = recallView(keepView(view, scene, null, []), wider);
    assert.equal(recalled.x - there.at.x, 100);
  });

  it("is not taken when it is something else", () => {
    const kept = keepView(view, scene, null, []);
    for (const wrong of [
      null,
      7,
      {},
      { ...kept, x: "1" },
      { ...kept, scale: 0 },
      { ...kept, hold: "tight" },
      { ...kept, off: "all" },
    ]) {
      assert.equal(readKeptView(wrong), null, JSON.stringify(wrong));
    }
    assert.deepEqual(readKeptView({ ...kept, off: ["cuts", "roof"] })?.off, ["cuts"]);
  });
});
