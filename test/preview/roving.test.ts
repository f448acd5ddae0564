import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("a row of buttons with one stop", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/roving.ts");
    await page.evaluate(`
      const list = document.createElement("div");
      for (const name of ["a", "b", "c"]) {
        const button = document.createElement("button");
        button.textContent = name;
        list.append(button);
      }
      document.body.append(list);
      subject.roveFocus(list);
      subject.setStop(list, 1);
    `);
  });

  after(() => page.context().close());

  const stops = () => page.locator('button[tabindex="0"]').allInnerTexts();

  it("is entered at its stop", async () => {
    assert.deepEqual(await stops(), ["b"]);
    await page.keyboard.press("Tab");
    assert.equal(await page.evaluate(() => document.activeElement?.textContent), "b");
  });

  it("moves its stop with the arrows, and not past its ends", async () => {
    for (const [key, stop] of [
      ["ArrowRight", "c"],
      ["ArrowDown", "c"],
      ["ArrowLeft", "b"],
      ["Home", "a"],
      ["ArrowUp", "a"],
      ["End", "c"],
      ["x", "c"],
    ] as const) {
      await page.keyboard.press(key);
      assert.deepEqual(await stops(), [stop], key);
    }
  });

  it("falls back to its first button", async () => {
    await page.evaluate("subject.setStop(document.querySelector('div'), -1)");
    assert.deepEqual(await stops(), ["a"]);
  });
});
