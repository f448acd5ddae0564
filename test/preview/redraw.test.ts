import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { paint, showPlan, TWO_WALLS, twoWalls } from "./support/show-plan.js";

describe("a picture that is drawn anew", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan();
  });

  after(() => preview.close());

  it("is the same element, with what changed put into it, and no style of its own", async () => {
    const { page } = preview;
    const picture = page.locator("svg.picture");
    await picture.evaluate((svg) => svg.setAttribute("data-kept", ""));
    // Attributes that the new drawing has not are taken away: the element itself stays.
    const before = await picture.elementHandle();
    await paint(preview, twoWalls(2, TWO_WALLS.replace("sash {", "light {")));
    const after = await picture.elementHandle();
    assert.equal(await page.evaluate(([a, b]) => a === b, [before, after]), true);
    assert.equal(await page.locator('g[id$="-opening-light"]').count(), 1);
    assert.equal(await page.locator("svg.picture style").count(), 0);
  });
});
