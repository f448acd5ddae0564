import assert from "node:assert/strict";
import { surfaceScene } from "../../../src/drawing/scene/surface-scene.js";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { wallScene } from "../../../src/drawing/scene/wall-scene.js";
import { nicheText } from "../../solver/insides/niche-text.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

describe("the scene of a surface", () => {
  const answer = solveClean(nicheText());
  const { wall } = firstWall(answer);
  const setting = settingOf(answer.plan);

  it("is what the scene of its wall holds of it", () => {
    const scene: Record<string, unknown> = wallScene(wall, [], 1, setting);
    for (const [key, part] of Object.entries(surfaceScene(wall, setting)))
      assert.deepEqual(scene[key], part, key);
  });

  it("is told of a surface inside an opening as of a wall", () => {
    const back = wall.insides.find(({ face }) => face === "back")!;
    const scene = surfaceScene(back, setting);
    assert.equal(scene.name, "back.shelf.back");
    assert.match(scene.description, /^\d+ across, \d+ up; \d+ courses, \d+ pieces\.$/);
    const drawn = scene.pieces.reduce(
      (sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length,
      0,
    );
    assert.equal(drawn, back.lays[0]!.pieces.count);
  });
});
