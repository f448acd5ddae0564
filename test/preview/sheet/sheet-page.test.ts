import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { run } from "../../../src/engine.js";
import { type Paper, paperOf } from "../../../src/sheets/index.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { needsBrowser, openPreview, type OpenPreview } from "../support/open-preview.js";
import { THEMES, type ThemeName } from "../support/themes.js";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const NAME = "three-walls.tileplan";

function examplePaper(): Paper {
  const { solved, diagnostics } = run(exampleText(NAME), exampleSource(NAME));
  return paperOf(solved, diagnostics, takeoff(solved), { revision: null });
}

describe("the page of a sheet", function () {
  needsBrowser(this);
  const paper = examplePaper();
  let page: OpenPreview;

  async function show(theme?: ThemeName): Promise<void> {
    page = await openPreview({ shows: "sheet", ...(theme && { theme }) });
    await page.post({ type: "plan", uri: "file:///a.tileplan", name: NAME });
    await page.post({ type: "paper", paper });
    await page.waitFor("painted");
  }

  afterEach(async () => {
    assert.deepEqual(page.complaints, [], "nothing fails, nothing is refused by the policy");
    await page.close();
  });

  it("has every page of the paper, with its tables and its picture", async () => {
    await show();
    const titles = await page.page.locator("section h2").allInnerTexts();
    assert.deepEqual(
      titles,
      paper.pages.map(({ title }) => title),
    );
    const back = page.page.locator("#page-wall-back");
    assert.equal(await back.locator("figure svg").count(), 1);
    const wanted = paper.pages.find(({ id }) => id === "wall-back")!.blocks;
    const tables = wanted.filter(({ kind }) => kind === "table").length;
    assert.equal(await back.locator("table").count(), tables);
    assert.ok((await page.page.locator(".caution").count()) > 0);
  });

  it("asks for the sheet to be saved", async () => {
    await show();
    await page.page.getByRole("button", { name: "Save..." }).click();
    await page.waitFor("save" as never);
  });

  it("goes to a part, and stays there when the sheet is made anew", async () => {
    await show();
    await page.page.getByRole("button", { name: "Shopping list" }).click();
    const top = (): Promise<number> => page.page.locator("main").evaluate((main) => main.scrollTop);
    const before = await top();
    assert.ok(before > 100);
    const past = page.sent().length;
    await page.post({ type: "paper", paper });
    await page.waitFor("painted", past);
    assert.equal(await top(), before);
  });

  it("keeps the last sheet when the plan is gone, and says why", async () => {
    await show();
    await page.post({ type: "missing", why: "a.tileplan was deleted." });
    await page.page.getByText("a.tileplan was deleted.").waitFor();
    assert.ok((await page.page.locator("section").count()) > 0);
  });

  for (const theme of Object.keys(THEMES) as ThemeName[]) {
    it(`can be used by everyone in ${theme} (axe)`, async () => {
      await show(theme);
      await page.page.evaluate(AXE);
      const found = await page.page.evaluate(() =>
        (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run(),
      );
      const violations = found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`);
      assert.deepEqual(violations, []);
    });
  }
});
