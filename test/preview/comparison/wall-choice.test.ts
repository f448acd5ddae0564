import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import {
  comparisonOf,
  MOVED,
  paintComparison,
  showComparison,
} from "../support/show-comparison.js";
import { TWO_WALLS } from "../support/show-plan.js";

const BOTH = MOVED.replace("size 36 x 48", "size 30 x 48");

describe("the choice of a wall", function () {
  needsBrowser(this);
  let page: OpenPreview;

  before(async () => {
    page = await showComparison({}, comparisonOf({ way: "sides", wall: null }, TWO_WALLS, BOTH));
  });

  after(() => page.close());

  const current = () => page.page.locator(".walls [aria-current]").getAttribute("data-wall");

  it("names each wall that changed, with what changed on it", async () => {
    const texts = await page.page.locator(".walls button").allInnerTexts();
    assert.equal(texts.length, 2);
    assert.match(texts[0]!, /^Back wall\n\d+ cuts changed/);
    assert.match(texts[1]!, /^Side wall\n\d+ cuts changed/);
    assert.equal(await current(), "back");
  });

  it("asks for another wall by keys, and keeps the focus", async () => {
    await page.page.locator('.walls [data-wall="back"]').focus();
    await page.page.keyboard.press("ArrowRight");
    await page.page.keyboard.press("Enter");
    assert.deepEqual(page.sent().at(-1), {
      type: "look",
      look: { way: "sides", wall: "side" },
    });
    await paintComparison(page, comparisonOf({ way: "sides", wall: "side" }, TWO_WALLS, BOTH, 2));
    assert.equal(await current(), "side");
    const focused = await page.page.evaluate(
      () => (document.activeElement as HTMLElement).dataset.wall,
    );
    assert.equal(focused, "side");
  });

  it("is not there where no wall changed", async () => {
    await paintComparison(
      page,
      comparisonOf({ way: "sides", wall: null }, TWO_WALLS, TWO_WALLS, 3),
    );
    assert.equal(await page.page.locator(".walls").isVisible(), false);
  });
});
