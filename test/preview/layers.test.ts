import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { paint, showPlan, twoWalls } from "./support/show-plan.js";

/** What each switch takes away: a thing that is there before. */
const TAKEN: readonly (readonly [string, string])[] = [
  ["Dimensions", '[data-layer="dimensions"] path'],
  ["Labels and numbers", '[data-wall] [data-role="name"] text'],
  ["Cuts marked", "[data-wall] .gl-stroke-cut-hatch"],
  ["Soft joints", '[data-layer="soft"] path'],
  ["Hidden strips", '[data-layer="hidden"] path'],
  ["Legend and notes", "#gl-notes text"],
];

describe("the layers", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan();
    await preview.page.locator("summary", { hasText: "Layers" }).click();
  });

  after(() => preview.close());

  for (const [label, selector] of TAKEN) {
    it(`shows and hides: ${label}`, async () => {
      const thing = preview.page.locator(selector).first();
      assert.equal(await isShown(), true);
      await preview.page.getByLabel(label).uncheck();
      assert.equal(await isShown(), false);
      await paint(preview, twoWalls(1));
      assert.equal(await isShown(), false, "it stays hidden over an update");
      await preview.page.getByLabel(label).check();
      assert.equal(await isShown(), true);

      function isShown(): Promise<boolean> {
        return thing.evaluate((element) => {
          let each: Element | null = element;
          while (each && getComputedStyle(each).display !== "none") each = each.parentElement;
          return each === null;
        });
      }
    });
  }

  it("leaves cut pieces as plain tiles when their marks are hidden", async () => {
    const { page } = preview;
    const fillOf = (kind: string) =>
      page
        .locator(`[data-wall] [data-kind="${kind}"]`)
        .first()
        .evaluate((element) => getComputedStyle(element).fill);
    assert.notEqual(await fillOf("cut"), await fillOf("whole"));
    await page.getByLabel("Cuts marked").uncheck();
    assert.equal(await fillOf("cut"), await fillOf("whole"));
    await page.getByLabel("Cuts marked").check();
  });
});
