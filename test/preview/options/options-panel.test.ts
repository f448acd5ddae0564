import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import type { PlanOptions } from "../../../src/service/index.js";
import { needsBrowser, openModule } from "../support/open-preview.js";
import { TWO_WALLS } from "../support/show-plan.js";
import { planOptions } from "../support/plan-options.js";

describe("the panel of layouts", function () {
  needsBrowser(this);
  let page: Page;
  let options: PlanOptions;

  before(async () => {
    options = await planOptions(TWO_WALLS);
    page = await openModule("src/preview/options/options-panel.ts");
    await page.evaluate(`
      window.taken = [];
      window.panel = new subject.OptionsPanel((place) => window.taken.push(place));
      document.body.append(panel.element);
      panel.element.hidden = false;`);
  });

  after(() => page.context().close());

  const show = (shown: PlanOptions | null) => page.evaluate(`panel.show(${JSON.stringify(shown)})`);

  it("has a part for each wall, with its title and its cards", async () => {
    await show(options);
    assert.deepEqual(await page.locator("h3").allTextContents(), ["Back wall", "Side wall"]);
    assert.equal(await page.getByRole("region", { name: "Side wall" }).count(), 1);
    const cards = await page
      .locator("section section")
      .evaluateAll((parts) => parts.map((part) => part.querySelectorAll("li.option").length));
    assert.deepEqual(
      cards,
      options.groups.map((group) => group.options.length),
    );
  });

  it("tells which one is taken", async () => {
    await page.locator("section section").nth(1).getByRole("button").first().click();
    const [place] = await page.evaluate<{ group: number; option: number }[]>("window.taken");
    const first = options.groups[1]!.options.findIndex(({ edits }) => edits.length > 0);
    assert.deepEqual(place, { group: 1, option: first });
  });

  it("says of how many walls more nothing was worked out", async () => {
    await show({ ...options, more: 3 });
    assert.equal(await page.getByText("3 more walls: choose one").count(), 1);
    await show(null);
    assert.equal(await page.locator("h3").count(), 0);
  });
});
