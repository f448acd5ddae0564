import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { exampleSource, exampleText } from "../support/examples.js";
import { needsBrowser, openPreview, type OpenPreview } from "./support/open-preview.js";
import { planPicture } from "./support/plan-picture.js";
import { paint, showPlan } from "./support/show-plan.js";
import { THEMES, type ThemeName } from "./support/themes.js";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const FAULTS = "faults.tileplan";

describe("the preview's program, looked at by axe", function () {
  needsBrowser(this);

  for (const theme of Object.keys(THEMES) as ThemeName[]) {
    it(`has nothing to fault in the theme "${theme}"`, async () => {
      const picture = planPicture(exampleText(FAULTS), exampleSource(FAULTS), 1, "f");
      const preview = await showPlan({ theme }, { ...picture, simplified: true });
      await preview.page.getByText("Layers").click();
      assert.deepEqual(await faultsOf(preview), []);
      await preview.page.locator("summary", { hasText: "Keys" }).click();
      await preview.page.keyboard.press("Escape");
      assert.deepEqual(await faultsOf(preview), []);
      assert.deepEqual(preview.complaints, []);
      await preview.close();
    });
  }

  it("has nothing to fault before a picture comes, nor in little room", async () => {
    const preview = await openPreview({ width: 420, height: 500 });
    assert.deepEqual(await faultsOf(preview), []);
    const picture = planPicture(exampleText(FAULTS), exampleSource(FAULTS), 1, "f");
    await preview.post({ type: "plan", uri: "f", name: "faults", pinned: true, marked: true });
    await paint(preview, picture);
    assert.deepEqual(await faultsOf(preview), []);
    await preview.close();
  });
});

/** What axe finds, each with the elements it speaks of. Its script is put past the policy by the test. */
async function faultsOf({ page }: OpenPreview): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate<AxeResults>("axe.run()");
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`,
  );
}
