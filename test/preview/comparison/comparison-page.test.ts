import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { exampleSource, exampleText } from "../../support/examples.js";
import { needsBrowser, openPreview, type OpenPreview } from "../support/open-preview.js";
import {
  AGAINST,
  comparisonOf,
  MOVED,
  paintComparison,
  showComparison,
  SINCE,
} from "../support/show-comparison.js";
import { TWO_WALLS, URI } from "../support/show-plan.js";
import { THEMES, type ThemeName } from "../support/themes.js";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const LOOK = { way: "sides", wall: null } as const;

describe("the page of a comparison", function () {
  needsBrowser(this);
  let page: OpenPreview;

  beforeEach(async () => {
    page = await showComparison({}, comparisonOf(LOOK));
  });

  afterEach(async () => {
    assert.deepEqual(page.complaints, [], "nothing fails, nothing is refused by the policy");
    await page.close();
  });

  const note = () => page.page.locator(".note");

  it("says what is compared with what", async () => {
    assert.equal(
      await page.page.locator(".against").innerText(),
      `two-walls.tileplan as it is now, against ${SINCE}`,
    );
  });

  it("keeps the last whole comparison under a note while the text is broken", async () => {
    const before = await page.page.locator(".summary").innerText();
    const broken = MOVED.replace("size 60 x 48", "size 60 x");
    await page.post({ type: "comparison", comparison: comparisonOf(LOOK, TWO_WALLS, broken, 2) });
    await page.page.getByText(/Part of the text could not/).waitFor();
    assert.equal(await page.page.locator(".summary").innerText(), before);
    await paintComparison(page, comparisonOf(LOOK, TWO_WALLS, MOVED, 3));
    assert.equal(await note().isVisible(), false);
  });

  it("says why there is nothing to compare with, and no longer once there is", async () => {
    await page.post({ type: "missing", why: "two-walls.tileplan was deleted." });
    await page.page.getByText("two-walls.tileplan was deleted.").waitFor();
    await page.post({ type: "against", words: SINCE });
    await note().waitFor({ state: "hidden" });
  });

  it("passes over a comparison of another plan and what is no message", async () => {
    const before = await page.page.locator(".summary").innerText();
    const other = { ...comparisonOf(LOOK, TWO_WALLS, TWO_WALLS, 9), uri: "file:///other" };
    await page.post({ type: "comparison", comparison: other });
    await page.post({ type: "comparison" } as never);
    await page.page.waitForTimeout(50);
    assert.equal(await page.page.locator(".summary").innerText(), before);
  });

  it("keeps what it shows for a reload of the window", async () => {
    await page.page.getByRole("button", { name: "Overlay" }).click();
    const state = await page.page.evaluate(() => sessionStorage.getItem("state"));
    const { handle, ...kept } = JSON.parse(state!) as Record<string, unknown>;
    assert.deepEqual(kept, { uri: URI, against: AGAINST, look: { way: "overlay", wall: "back" } });
    assert.equal(handle, 0.5);
  });
});

describe("the page of a comparison, before one comes", function () {
  needsBrowser(this);

  it("is an empty page without complaints", async () => {
    const page = await openPreview({ shows: "comparison" });
    await page.page.getByRole("button", { name: "Fit" }).click();
    await page.page.locator(".board").focus();
    for (const key of ["ArrowUp", "+", "0", "1", "w"]) await page.page.keyboard.press(key);
    await page.page.mouse.click(300, 300);
    assert.deepEqual(page.complaints, []);
    await page.close();
  });
});

describe("the page of a comparison, looked at by axe", function () {
  needsBrowser(this);
  const before = exampleText("three-walls.tileplan");
  const after = before.replace("at 14 5/16, 54 3/4", "at 15 5/16, 55 3/4");
  const source = exampleSource("three-walls.tileplan");

  for (const theme of Object.keys(THEMES) as ThemeName[]) {
    it(`has nothing to fault in the theme "${theme}"`, async () => {
      for (const way of ["sides", "overlay", "slider"] as const) {
        const comparison = comparisonOf({ way, wall: null }, before, after, 1, source);
        const page = await showComparison({ theme }, comparison);
        await page.page.evaluate(AXE);
        const { violations } = await page.page.evaluate<AxeResults>("axe.run()");
        assert.deepEqual(
          violations.map(({ id, nodes }) => [id, nodes[0]?.html]),
          [],
        );
        await page.close();
      }
    });
  }
});
