import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import {
  comparisonOf,
  MOVED,
  paintComparison,
  showComparison,
} from "../support/show-comparison.js";
import { TWO_WALLS } from "../support/show-plan.js";

describe("the summary of a comparison", function () {
  needsBrowser(this);
  let page: OpenPreview;
  const comparison = comparisonOf({ way: "sides", wall: null });

  before(async () => {
    page = await showComparison({}, comparison);
  });

  after(() => page.close());

  it("says section by section what the comparison says, and the caution", async () => {
    const titles = await page.page.locator(".summary h2").allTextContents();
    assert.deepEqual(
      titles,
      comparison.sections.map(({ title }) => title),
    );
    const lines = await page.page.locator(".summary li").allTextContents();
    assert.deepEqual(
      lines,
      comparison.sections.flatMap(({ lines: each }) => each),
    );
    assert.match(await page.page.locator(".summary p").innerText(), /wet or with extraction/);
  });

  it("shows names as text, whatever they hold", async () => {
    const evil = "<img src=x onerror=alert(1)>";
    const after = MOVED.replace("Back wall", evil);
    await paintComparison(page, comparisonOf({ way: "sides", wall: null }, TWO_WALLS, after, 2));
    assert.equal(await page.page.locator("img").count(), 0);
    assert.ok((await page.page.locator(".summary").innerText()).includes(evil));
  });

  it("says so where nothing changed but the text", async () => {
    const same = comparisonOf({ way: "sides", wall: null }, TWO_WALLS, `${TWO_WALLS}# end\n`, 3);
    await paintComparison(page, same);
    assert.equal(await page.page.locator(".summary").innerText(), "Nothing changed but the text.");
  });
});
