import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { showPlan } from "./support/show-plan.js";

describe("the menus", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan();
  });

  after(() => preview.close());

  const summary = () => preview.page.locator("summary", { hasText: "Layers" });
  const isOpen = () => preview.page.locator(".layer-list").isVisible();

  it("open by the keyboard and close at Escape, which gives the focus back", async () => {
    await summary().focus();
    await preview.page.keyboard.press("Enter");
    assert.equal(await isOpen(), true);
    await preview.page.keyboard.press("Tab");
    await preview.page.keyboard.press("Escape");
    assert.equal(await isOpen(), false);
    assert.equal(await summary().evaluate((each) => each === document.activeElement), true);
  });

  it("close at a press elsewhere, and stay open at one inside", async () => {
    await summary().click();
    await preview.page.getByLabel("Soft joints").click();
    assert.equal(await isOpen(), true);
    await preview.page.mouse.click(500, 400);
    assert.equal(await isOpen(), false);
  });
});
