import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { pixelOf, seenBox, showPlan } from "./support/show-plan.js";

describe("the pointer on the picture", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  beforeEach(async () => {
    preview = await showPlan();
  });

  afterEach(() => preview.close());

  it("drags it along", async () => {
    const before = await pixelOf(preview, 500, 300);
    const { mouse } = preview.page;
    await mouse.move(400, 400);
    await mouse.down();
    await mouse.move(460, 370, { steps: 6 });
    await mouse.up();
    const [x, y] = await pixelOf(preview, 500, 300);
    assert.ok(Math.abs(x - before[0] - 60) < 0.01 && Math.abs(y - before[1] + 30) < 0.01);
  });

  it("scrolls it by the wheel, sideways with Shift", async () => {
    const before = await pixelOf(preview, 500, 300);
    const { mouse, keyboard } = preview.page;
    await mouse.move(400, 400);
    await mouse.wheel(0, 40);
    const [, y] = await pixelOf(preview, 500, 300);
    assert.ok(Math.abs(before[1] - y - 40) < 0.01);
    await keyboard.down("Shift");
    await mouse.wheel(0, 30);
    await keyboard.up("Shift");
    const [x, same] = await pixelOf(preview, 500, 300);
    assert.ok(Math.abs(before[0] - x - 30) < 0.01);
    assert.equal(same, y);
  });

  it("zooms with Ctrl and the wheel, or a trackpad's pinch, about the pointer", async () => {
    const { mouse, keyboard } = preview.page;
    const [x, y] = await pixelOf(preview, 500, 300);
    const [, , width] = await seenBox(preview);
    await mouse.move(Math.round(x), Math.round(y));
    await keyboard.down("Control");
    for (let i = 0; i < 10; i++) await mouse.wheel(0, -10);
    await keyboard.up("Control");
    const after = await pixelOf(preview, 500, 300);
    assert.ok(Math.hypot(after[0] - x, after[1] - y) < 3, "the place under the pointer stays");
    assert.ok((await seenBox(preview))[2]! < width! / 2);
  });

  it("pans by one finger and zooms by two", async () => {
    const [, , width] = await seenBox(preview);
    const before = await pixelOf(preview, 500, 300);
    const fingers = await touches(preview);
    await fingers("touchStart", [[400, 400]]);
    await fingers("touchMove", [[430, 400]]);
    await fingers("touchMove", [[450, 400]]);
    await fingers("touchEnd", []);
    const [x] = await pixelOf(preview, 500, 300);
    assert.ok(Math.abs(x - before[0] - 50) < 0.01, `${x - before[0]}`);
    const one: [number, number] = [300, 400];
    await fingers("touchStart", [one, [400, 400]]);
    await fingers("touchMove", [one, [450, 400]]);
    await fingers("touchMove", [one, [500, 400]]);
    await fingers("touchEnd", []);
    const [, , narrower] = await seenBox(preview);
    assert.ok(Math.abs(width! / narrower! - 2) < 0.01, `${width! / narrower!}`);
  });
});

/** Fingers on the screen, through the browser's own protocol. */
async function touches({ page }: OpenPreview) {
  const session = await page.context().newCDPSession(page);
  return (type: "touchStart" | "touchMove" | "touchEnd", places: readonly [number, number][]) =>
    session.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: places.map(([x, y], id) => ({ x, y, id })),
    });
}
