import assert from "node:assert/strict";
import type { Block, Paper } from "../../../src/sheets/index.js";
import { needsBrowser, openPreview, type OpenPreview } from "../support/open-preview.js";

function paperOf(...blocks: readonly Block[]): Paper {
  return { title: "Bath", revision: null, pages: [{ id: "a", title: "A", wall: null, blocks }] };
}

describe("a block of a sheet's page", function () {
  needsBrowser(this);
  let page: OpenPreview;
  beforeEach(async () => {
    page = await openPreview({ shows: "sheet" });
  });
  afterEach(() => page.close());

  async function shown(...blocks: readonly Block[]) {
    await page.post({ type: "paper", paper: paperOf(...blocks) });
    await page.waitFor("painted");
    return page.page.locator("#page-a");
  }

  it("shows a plan's words as words, never as markup", async () => {
    const words = `<img src=x onerror="document.title='taken'"> & "7"`;
    const section = await shown(
      { kind: "text", text: words },
      { kind: "caution", lines: [words] },
      { kind: "list", numbered: true, items: [words] },
      {
        kind: "table",
        caption: words,
        columns: [{ title: words, align: "right" }],
        rows: [[words]],
      },
    );
    assert.equal(await section.locator("img").count(), 0);
    assert.equal(await section.getByText(words).count(), 6);
  });

  it("numbers a list whose order matters, and another not", async () => {
    const section = await shown(
      { kind: "list", numbered: true, items: ["a", "b"] },
      { kind: "list", numbered: false, items: ["c"] },
    );
    assert.equal(await section.locator("ol > li").count(), 2);
    assert.equal(await section.locator("ul > li").count(), 1);
  });

  it("tells a pole as its marks, the highest first", async () => {
    const mark = (at: number, reading: string) => ({
      ...{ at, reading, what: `mark at ${reading}`, weight: "course" as const },
    });
    const section = await shown({
      ...{ kind: "pole", caption: "Heights", direction: "up", from: 0, to: 2 },
      marks: [mark(0, "0 in"), mark(2, "3 in")],
    });
    const rows = await section.locator("tbody tr").allInnerTexts();
    assert.deepEqual(rows, ["3 in\tmark at 3 in", "0 in\tmark at 0 in"]);
  });
});
