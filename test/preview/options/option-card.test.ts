import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import type { PlanOption } from "../../../src/service/index.js";
import { needsBrowser, openModule } from "../support/open-preview.js";
import { planOptions, WISHED } from "../support/plan-options.js";

describe("a layout's card", function () {
  needsBrowser(this);
  let page: Page;
  let own: PlanOption;

  before(async () => {
    own = (await planOptions(WISHED)).groups[0]!.options[0]!;
    page = await openModule("src/preview/options/option-card.ts");
  });

  after(() => page.context().close());

  const show = (option: PlanOption) =>
    page.evaluate(
      `document.body.replaceChildren(subject.optionCard(${JSON.stringify(option)}, () => document.title = "taken"))`,
    );

  it("tells each wish, met or not, by a sign and in words", async () => {
    await show(own);
    const lines = await page.locator(".wishes li").allTextContents();
    assert.deepEqual(
      lines,
      own.wishes.map(
        ({ words, isMet, told }) => `${isMet ? "✓" : "✗"}${words}: ${told.replaceAll("`", "")}`,
      ),
    );
    assert.equal(
      await page.locator(".missed").count(),
      own.wishes.filter(({ isMet }) => !isMet).length,
    );
  });

  it("has its figures by name, and the starts of several walls behind a heading", async () => {
    const names = await page.locator("dt").allTextContents();
    assert.deepEqual(
      names,
      own.figures.map(([name]) => name),
    );
    assert.equal(await page.locator("details li").count(), 2);
  });

  it("takes it, or writes down the plan's own; has no button where there is nothing to write", async () => {
    await page.getByRole("button", { name: "Write A down" }).click();
    assert.equal(await page.title(), "taken");
    await show({ ...own, had: false, letter: "C" });
    assert.equal(await page.getByRole("button", { name: "Take C" }).count(), 1);
    await show({ ...own, edits: [] });
    assert.equal(await page.getByRole("button").count(), 0);
    assert.equal(await page.getByText("as it is written").count(), 1);
    await show({ ...own, had: false, edits: [] });
    assert.equal(await page.getByText("can't be written").count(), 1);
  });
});
