import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("words that quote a plan", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/quoted.ts");
  });

  after(() => page.context().close());

  const markup = (words: string): Promise<string> =>
    page.evaluate<string>(`{
      const line = document.createElement("p");
      line.append(...subject.quoted(${JSON.stringify(words)}));
      line.innerHTML;
    }`);

  it("set what stands between backticks as code", async () => {
    assert.equal(await markup("its `variation` is wanted"), "its <code>variation</code> is wanted");
    assert.equal(await markup("`few cuts`"), "<code>few cuts</code>");
  });

  it("are text and nothing else, whatever they hold", async () => {
    assert.equal(await markup("a <b> `<i>`"), "a &lt;b&gt; <code>&lt;i&gt;</code>");
    assert.equal(await markup("plain"), "plain");
  });
});
