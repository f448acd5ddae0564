import assert from "node:assert/strict";
import { writeFileSync, readFileSync } from "node:fs";
import { hands } from "../hands.js";
import { openPlan, planUri } from "../plans.js";
import { openPreview, previewTabs, ShownPreview } from "../preview.js";
import { readTask } from "../task.js";
import { until } from "../until.js";

/** What was seen before the window was loaded anew. */
const kept = (): string => planUri("seen-before.json").fsPath;

describe("a preview when the window is loaded anew", () => {
  it("is there again: its plan, its pin, its zoom, its layers", async () => {
    const { phase } = await readTask();
    if (phase === 1) {
      await openPlan("window.tileplan");
      const preview = await openPreview();
      await preview.untilDrawn("window sash");
      await hands.click({ selector: "button[title^='Stay with']", where: "preview" });
      await hands.click({ selector: "button[aria-label='Zoom in']", where: "preview" });
      await until("the pin", () => previewTabs()[0] === "Pinned: window.tileplan");
      writeFileSync(kept(), JSON.stringify(await preview.view()));
      // The preview keeps its view once it has rested for a moment.
      await new Promise((resolve) => setTimeout(resolve, 500));
      await hands.reload();
      return;
    }
    const preview = new ShownPreview("window.tileplan");
    await preview.untilDrawn("window sash");
    assert.deepEqual(previewTabs(), ["Pinned: window.tileplan"]);
    const { zoom } = JSON.parse(readFileSync(kept(), "utf8")) as { readonly zoom: string };
    assert.equal((await preview.view()).zoom, zoom);
    await hands.screenshot("reloaded");
  });
});
