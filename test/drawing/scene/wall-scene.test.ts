import assert from "node:assert/strict";
import { boxWithin } from "../../../src/drawing/labels.js";
import { roomOf, wallScene } from "../../../src/drawing/scene/wall-scene.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

describe("the scene of one wall", () => {
  const { solved, setting } = solvedWallOf(
    planOf(wallText("  window w {\n    at 10, 8\n    size 14 x 12\n    movement 1/8\n  }")),
  );
  const scene = wallScene(solved, [], 2, setting);

  it("keeps its name, its title and a sentence for those who hear it", () => {
    assert.equal(scene.name, "back");
    assert.equal(scene.title, "Back wall");
    assert.equal(
      scene.description,
      `40 across, 30 up; 10 courses, ${solved.lays[0]!.pieces.count} pieces; window w.`,
    );
  });

  it("has every text in the room that it takes", () => {
    const room = roomOf(scene, setting.em);
    assert.ok(scene.labels.every(({ box }) => boxWithin(box, room)));
    assert.ok(room.left < 0 && room.right > 1016 && room.top < -762 && room.bottom > 0);
  });

  it("is drawn without a lay as well", () => {
    const bare = solvedWallOf(planOf('wall back "Back wall" {\n  size 40 x 30\n}'));
    const empty = wallScene(bare.solved, [], 1, bare.setting);
    assert.deepEqual(empty.pieces, []);
    assert.deepEqual(empty.bands, []);
    assert.ok(empty.labels.some(({ text }) => text === "Nothing is laid on this wall."));
  });
});
