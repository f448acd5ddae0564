import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import { comparisonOf, showComparison } from "../support/show-comparison.js";

describe("the switch of how both states are shown", function () {
  needsBrowser(this);
  let page: OpenPreview;

  before(async () => {
    page = await showComparison({}, comparisonOf({ way: "sides", wall: null }));
  });

  after(() => page.close());

  it("has one of three pressed, and asks for what is chosen", async () => {
    const pressed = () => page.page.locator('.toolbar button[aria-pressed="true"]').allInnerTexts();
    assert.deepEqual(await pressed(), ["Side by side"]);
    await page.page.getByRole("button", { name: "Slider" }).click();
    assert.deepEqual(await pressed(), ["Slider"]);
    const sent = page.sent().at(-1) as unknown;
    assert.deepEqual(sent, { type: "look", look: { way: "slider", wall: "back" } });
  });
});
