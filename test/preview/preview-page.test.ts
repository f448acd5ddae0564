import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("the page of a preview", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/preview-page.ts");
    await page.evaluate(`{
      const part = (id) => Object.assign(document.createElement("div"), { id });
      const names = ["toolbar", "strip", "options", "stage", "findings"];
      const parts = Object.fromEntries(names.map((name) => [name, part(name)]));
      parts.cards = [part("card")];
      window.built = new subject.PreviewPage(document.body, parts);
    }`);
  });

  after(() => page.context().close());

  const textOf = (selector: string) => page.locator(selector).textContent();

  it("has its parts in the order in which they are read", async () => {
    const ids: string[] = await page.evaluate(
      `Array.from(document.querySelectorAll("div[id], .note"), (each) => each.id || "note")`,
    );
    const order = ["toolbar", "strip", "note", "options", "stage", "card", "findings"];
    assert.deepEqual(ids, order);
  });

  it("tells the keys of the picture to those who hear it", async () => {
    const stage = page.getByRole("application", { name: "Picture of the plan" });
    const help = await stage.getAttribute("aria-describedby");
    assert.match((await textOf(`#${help}`))!, /P walks from piece to piece/);
  });

  it("is named for its plan", async () => {
    await page.evaluate(`built.plan = "bath"`);
    assert.equal(await textOf("h1"), "bath");
    assert.equal(await page.getByRole("application", { name: "Picture of bath" }).count(), 1);
  });

  it("has a note where there is one, and speaks", async () => {
    assert.equal(await page.locator(".note").isHidden(), true);
    await page.evaluate(`{ built.note = "gone"; built.speak("course 1"); }`);
    assert.equal(await page.getByRole("status").innerText(), "gone");
    assert.equal(await textOf('[role="log"]'), "course 1");
    await page.evaluate("built.note = null");
    assert.equal(await page.locator(".note").isHidden(), true);
  });
});
