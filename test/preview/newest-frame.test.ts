import assert from "node:assert/strict";
import { NewestFrame } from "../../src/preview/newest-frame.js";

describe("the newest of what comes faster than frames", () => {
  const before = globalThis.requestAnimationFrame;
  let frames: (() => void)[] = [];

  beforeEach(() => {
    frames = [];
    globalThis.requestAnimationFrame = (frame) => frames.push(() => frame(0));
  });

  afterEach(() => {
    globalThis.requestAnimationFrame = before;
  });

  /** Comes to the next frame, and to its end. */
  async function nextFrame(): Promise<void> {
    for (const frame of frames.splice(0)) frame();
    await new Promise((resolve) => setTimeout(resolve));
  }

  function begin() {
    const painted: number[] = [];
    let seen = 0;
    const frame = new NewestFrame(
      0,
      (value) => painted.push(value),
      () => seen++,
    );
    return { frame, painted, seen: () => seen };
  }

  it("is painted at once, and seen a frame later", async () => {
    const { frame, painted, seen } = begin();
    frame.show(1);
    assert.deepEqual([painted, frame.painted, seen()], [[1], 1, 0]);
    await nextFrame();
    assert.deepEqual([painted, seen()], [[1], 1]);
  });

  it("is painted in the next frame where one was painted for this", async () => {
    const { frame, painted, seen } = begin();
    for (const value of [1, 2, 3]) frame.show(value);
    assert.deepEqual([painted, frame.newest, frame.painted], [[1], 3, 1]);
    await nextFrame();
    assert.deepEqual([painted, frame.painted, seen()], [[1, 3], 3, 1]);
  });

  it("is painted again when it is to be shown another way", () => {
    const { frame, painted } = begin();
    frame.show(1);
    frame.show(2);
    frame.repaint();
    assert.deepEqual([painted, frame.painted], [[1, 2], 2]);
  });
});
