import assert from "node:assert/strict";
import { buildScene } from "../../../src/drawing/index.js";
import { buildWallScene } from "../../../src/drawing/scene/build-wall-scene.js";
import { run } from "../../../src/engine.js";
import { exampleSource, exampleText } from "../../support/examples.js";

function outcome(name: string) {
  return run(exampleText(name), exampleSource(name));
}

describe("the scene of one wall for a sheet of paper", () => {
  const { solved, diagnostics } = outcome("three-walls.tileplan");
  const scenes = solved.walls.map((wall) => buildWallScene(solved, wall, diagnostics));

  it("shows that wall alone, with the pieces of the whole picture", () => {
    const whole = buildScene(solved, diagnostics);
    scenes.forEach((scene, i) => {
      assert.deepEqual(
        scene.walls.map(({ name }) => name),
        [solved.walls[i]!.wall.name],
      );
      assert.deepEqual(scene.walls[0]!.pieces, whole.walls[i]!.pieces);
    });
  });

  it("has larger text than a screen's picture of that wall", () => {
    scenes.forEach((scene, i) => {
      const wall = solved.walls[i]!;
      const plan = { ...solved.plan, walls: [wall.wall] };
      const screen = buildScene({ plan, walls: [wall] }, []);
      const share = ({ view, em }: typeof scene): number => em / (view.bottom - view.top);
      assert.ok(share(scene) > share(screen));
    });
  });

  it("leaves titles and cautions to the sheet", () => {
    for (const { labels, walls } of scenes) {
      const roles = new Set([...labels, ...walls[0]!.labels].map(({ role }) => role));
      assert.ok(!roles.has("title") && !roles.has("caution"));
    }
  });

  it("keeps all that it shows in view", () => {
    for (const { view, labels, walls, swatches } of scenes) {
      const [wall] = walls;
      const { x, y } = wall!.at;
      const boxes = [
        ...labels.map(({ box }) => box),
        ...swatches.map(({ box }) => box),
        ...wall!.labels.map(({ box }) => ({
          left: box.left + x,
          right: box.right + x,
          top: box.top + y,
          bottom: box.bottom + y,
        })),
      ];
      for (const box of boxes) {
        assert.ok(box.left >= view.left && box.right <= view.right);
        assert.ok(box.top >= view.top && box.bottom <= view.bottom);
      }
    }
  });

  it("numbers the wall's own findings, and tells them", () => {
    const faults = outcome("faults.tileplan");
    const wall = faults.solved.walls.find((each) =>
      faults.diagnostics.some(
        (found) => found.wall === each.wall.name && found.severity === "error",
      ),
    )!;
    const scene = buildWallScene(faults.solved, wall, faults.diagnostics);
    assert.ok(scene.badges.length > 0);
    assert.ok(scene.labels.some(({ text }) => text === "Findings"));
  });
});
