import assert from "node:assert/strict";
import { TONES } from "../../src/drawing/theme.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { paint, showPlan, twoWalls } from "./support/show-plan.js";
import { THEMES, type ThemeName } from "./support/themes.js";

describe("the drawing's styles", function () {
  needsBrowser(this);

  /** The computed colour of what is filled with a tone. */
  function fillOf({ page }: OpenPreview, tone: string): Promise<string> {
    return page
      .locator(`[data-wall] .gl-fill-${tone}`)
      .first()
      .evaluate((element) => getComputedStyle(element).fill);
  }

  it("stand in the page once, past the policy, and not in the drawing", async () => {
    const preview = await showPlan();
    await paint(preview, twoWalls(2));
    assert.equal(await preview.page.locator("style").count(), 0);
    assert.equal(await preview.page.evaluate(() => document.adoptedStyleSheets.length), 1);
    assert.deepEqual(preview.complaints, []);
    await preview.close();
  });

  it("take the editor's theme, whatever the system asks for", async () => {
    for (const theme of ["light", "dark"] as const) {
      const preview = await showPlan({ theme });
      for (const system of ["light", "dark"] as const) {
        await preview.page.emulateMedia({ colorScheme: system });
        assert.equal(await fillOf(preview, "tile"), rgb(TONES.tile[theme]), `${theme}, ${system}`);
      }
      await preview.close();
    }
  });

  it("draw in the editor's two colours in high contrast", async () => {
    for (const theme of ["contrast", "contrastLight"] as const satisfies ThemeName[]) {
      const preview = await showPlan({ theme });
      const paper = rgb(THEMES[theme].colours["--vscode-editor-background"]);
      assert.equal(await fillOf(preview, "tile"), paper);
      assert.equal(await fillOf(preview, "cut"), paper);
      await preview.close();
    }
  });

  it("leave the colours to a system that forces its own", async () => {
    const preview = await showPlan({ theme: "dark" });
    await preview.page.emulateMedia({ forcedColors: "active" });
    const canvas = await preview.page.evaluate(() => {
      document.body.style.setProperty("background-color", "Canvas");
      return getComputedStyle(document.body).backgroundColor;
    });
    assert.equal(await fillOf(preview, "tile"), canvas);
    await preview.close();
  });
});

function rgb(hex: string): string {
  const [red, green, blue] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
  return `rgb(${red}, ${green}, ${blue})`;
}
