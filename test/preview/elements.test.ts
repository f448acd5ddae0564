import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("elements", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/elements.ts");
  });

  after(() => page.context().close());

  const outer = (code: string) => page.evaluate<string>(`${code}.outerHTML`);

  it("hold texts as texts, never as markup", async () => {
    assert.equal(
      await outer(`subject.make("p", { title: '"a' }, "<b>x</b>", subject.make("i"))`),
      '<p title="&quot;a">&lt;b&gt;x&lt;/b&gt;<i></i></p>',
    );
  });

  it("of drawings are of SVG's own kind", async () => {
    assert.equal(
      await page.evaluate<string>(`subject.makeSvg("path", { d: "M0 0" }).namespaceURI`),
      "http://www.w3.org/2000/svg",
    );
  });

  it("that are buttons act when pressed", async () => {
    const pressed = await page.evaluate<number>(`(() => {
      let times = 0;
      subject.makeButton("Fit", "Show all", () => times++).click();
      return times;
    })()`);
    assert.equal(pressed, 1);
  });
});
