import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { seenBox, showPlan } from "./support/show-plan.js";

describe("a change of sight", function () {
  needsBrowser(this);

  /** The view boxes of the frames after a wall was chosen. */
  async function framesOf({ page }: OpenPreview): Promise<string[]> {
    return page.evaluate<string[]>(`new Promise((resolve) => {
      document.querySelector('.walls [data-wall="side"]').click();
      const boxes = [];
      const started = performance.now();
      requestAnimationFrame(function look() {
        boxes.push(document.querySelector(".picture").getAttribute("viewBox"));
        if (performance.now() - started < 400) requestAnimationFrame(look);
        else resolve(boxes);
      });
    })`);
  }

  it("glides, and comes to rest", async () => {
    const preview = await showPlan({ lessMotion: false });
    const boxes = await framesOf(preview);
    assert.ok(new Set(boxes).size > 2, "there are views between");
    assert.equal(boxes.at(-1), (await seenBox(preview)).join(" "));
    await preview.close();
  });

  it("is made at once where less motion is asked for, by the system or the editor", async () => {
    const system = await showPlan({ lessMotion: true });
    assert.equal(new Set(await framesOf(system)).size, 1);
    await system.close();
    const editor = await showPlan({ lessMotion: false });
    await editor.page.evaluate(() => document.body.classList.add("vscode-reduce-motion"));
    assert.equal(new Set(await framesOf(editor)).size, 1);
    await editor.close();
  });
});
