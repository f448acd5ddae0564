import assert from "node:assert/strict";
import type { PictureBox, WallScene } from "../../src/drawing/index.js";
import { PictureKeys } from "../../src/preview/picture-keys.js";
import { twoWalls } from "./support/show-plan.js";

const OVER: PictureBox = { left: 1, top: 2, right: 3, bottom: 4 };

describe("keys that are pressed on the picture", () => {
  function begin(chosen: string | null = null) {
    const done: string[] = [];
    const { scene } = twoWalls(1);
    const view = { x: scene.walls[0]!.at.x, y: 0, scale: 1, hold: "free" } as const;
    const sight = {
      ...{ scene, view },
      panBy: (dx: number, dy: number) => done.push(`pan ${dx} ${dy}`),
      zoom: (factor: number) => done.push(`zoom ${factor}`),
      fit: (hold: string) => done.push(`fit ${hold}`),
      actualSize: () => done.push("actual"),
      bringIn: () => done.push("bring in"),
    };
    const pointing = {
      walking: false,
      walkedOver: OVER,
      startWalking: (wall: WallScene) => done.push(`walk on ${wall.name}`),
      stopWalking: () => done.push("stop"),
      step: (step: string) => done.push(`step ${step}`),
      stepWall: (by: number) => done.push(`wall ${by}`),
      select: () => done.push("select"),
    };
    const keys = new PictureKeys(
      sight,
      pointing,
      () => chosen,
      (box) => {
        assert.equal(box, OVER);
        done.push("over");
      },
    );
    const press = (key: string, held: Partial<KeyboardEvent> = {}): boolean => {
      let taken = false;
      const event = { key, shiftKey: false, preventDefault: () => (taken = true), ...held };
      keys.press(event as unknown as KeyboardEvent);
      return taken;
    };
    return { done, press, pointing };
  }

  it("move and zoom it", () => {
    const { done, press } = begin();
    assert.ok(press("ArrowUp") && press("0"));
    assert.deepEqual(done, ["pan 0 60", "fit whole"]);
  });

  it("begin to walk on the chosen wall, else on the nearest, and keep the piece in sight", () => {
    const chosen = begin("side");
    chosen.press("p");
    assert.deepEqual(chosen.done, ["walk on side", "bring in", "over"]);
    const near = begin();
    near.press("p");
    assert.equal(near.done[0], "walk on back");
  });

  it("walk on, go to the line and stop", () => {
    const { done, press, pointing } = begin();
    pointing.walking = true;
    for (const key of ["ArrowLeft", "PageDown", "Enter", "Escape"]) press(key);
    const seen = ["bring in", "over"];
    assert.deepEqual(done, ["step left", ...seen, "wall 1", ...seen, "select", "stop"]);
  });

  it("are left to the editor where they are none of ours, or with Ctrl, Alt or the like", () => {
    const { done, press } = begin();
    assert.ok(!press("a") && !press("p", { ctrlKey: true }) && !press("p", { altKey: true }));
    assert.deepEqual(done, []);
  });
});
