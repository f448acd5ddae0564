import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("making an element like another", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/patch-element.ts");
  });

  after(() => page.context().close());

  /** Patches `from` into `to`; how it looks then, and which of the elements with ids were kept. */
  function patched(from: string, to: string): Promise<{ html: string; kept: string[] }> {
    return page.evaluate(`(() => {
      const of = (text) => {
        const box = document.createElement("div");
        box.innerHTML = text;
        return box.firstElementChild;
      };
      const old = of(${JSON.stringify(from)});
      const before = [...old.querySelectorAll("[id]")];
      subject.patchElement(old, of(${JSON.stringify(to)}));
      const kept = before.filter((each) => old.contains(each)).map((each) => each.id);
      return { html: old.outerHTML, kept };
    })()`);
  }

  it("changes attributes, texts and children to the other's", async () => {
    for (const [from, to] of [
      ["<p></p>", '<p a="1">x</p>'],
      ['<p a="1" b="2">x<i>y</i></p>', '<p b="3"><i>z</i></p>'],
      ["<g><a>1</a><b></b><a>2</a></g>", "<g><b></b><a>1</a></g>"],
      ["<g>text</g>", "<g><a></a></g>"],
    ] as const) {
      assert.equal((await patched(from, to)).html, to);
    }
  });

  it("keeps what is alike in the page, and looks inside what has the same id", async () => {
    const from = '<g><g id="a"><p id="b">1</p><p id="c">2</p></g><p id="d">3</p></g>';
    const to = '<g><g id="a"><p id="b">1</p><p id="c">9</p></g><p id="e">3</p></g>';
    const { html, kept } = await patched(from, to);
    assert.equal(html, to);
    assert.deepEqual(kept, ["a", "b", "c"]);
  });
});
