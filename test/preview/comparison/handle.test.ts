import assert from "node:assert/strict";
import { placeAfter } from "../../../src/preview/comparison/handle.js";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import { comparisonOf, showComparison } from "../support/show-comparison.js";

describe("the handle's keys", () => {
  it("step, leap and go to the ends", () => {
    assert.equal(placeAfter("ArrowRight", 0.5), 0.52);
    assert.equal(placeAfter("ArrowDown", 0.5), 0.48);
    assert.equal(placeAfter("PageUp", 0.5), 0.6);
    assert.equal(placeAfter("Home", 0.5), 0);
    assert.equal(placeAfter("End", 0.5), 1);
    assert.equal(placeAfter("x", 0.5), null);
  });
});

describe("the handle", function () {
  needsBrowser(this);
  let page: OpenPreview;

  beforeEach(async () => {
    page = await showComparison({}, comparisonOf({ way: "slider", wall: "back" }));
  });

  afterEach(async () => {
    assert.deepEqual(page.complaints, []);
    await page.close();
  });

  const slider = () => page.page.getByRole("slider", { name: "Before and after" });
  const clips = () =>
    page.page
      .locator(".layer")
      .evaluateAll((all) => all.map((each) => getComputedStyle(each).clipPath));

  it("cuts both pictures at one line, wherever it is moved", async () => {
    for (const [key, percent] of [
      ["ArrowRight", 52],
      ["End", 100],
      ["Home", 0],
    ] as const) {
      await slider().press(key);
      assert.equal(await slider().getAttribute("aria-valuenow"), String(percent));
      const [after, before] = await clips();
      assert.match(after!, new RegExp(`inset\\(0px 0px 0px ${percent}%\\)`));
      assert.match(
        before!,
        new RegExp(
          `inset\\(0px calc\\(100% - ${percent}%\\) 0px 0px\\)|inset\\(0px ${100 - percent}% 0px 0px\\)`,
        ),
      );
    }
  });

  it("is dragged by the mouse without moving the picture, and stays in the room", async () => {
    const { mouse } = page.page;
    const board = (await page.page.locator(".board").boundingBox())!;
    const view = () => page.page.locator(".after svg").getAttribute("viewBox");
    const before = await view();
    await mouse.move(board.x + board.width / 2, board.y + 300);
    await mouse.down();
    await mouse.move(board.x + board.width / 4, board.y + 320, { steps: 4 });
    assert.equal(await slider().getAttribute("aria-valuenow"), "25");
    await mouse.move(board.x - 200, board.y + 320, { steps: 4 });
    await mouse.up();
    assert.equal(await slider().getAttribute("aria-valuenow"), "0");
    assert.equal(await view(), before);
    const grip = (await page.page.locator(".handle i").boundingBox())!;
    assert.ok(grip.x >= board.x, `${grip.x} in ${board.x}`);
  });

  it("is where it was after a reload", async () => {
    await slider().press("PageUp");
    const past = page.sent().length;
    await page.page.reload();
    await page.waitFor("ready", past);
    assert.equal(await page.page.locator(".handle").getAttribute("aria-valuenow"), "60");
  });
});
