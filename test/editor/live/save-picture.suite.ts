import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, planUri } from "../plans.js";
import { openPreview } from "../preview.js";
import { until } from "../until.js";

/** The bytes of a file of the workspace, once it is there. */
function bytesOf(name: string): Promise<Uint8Array> {
  return until(name, async () => {
    try {
      const bytes = await vscode.workspace.fs.readFile(planUri(name));
      return bytes.length > 0 && bytes;
    } catch {
      return null;
    }
  });
}

/** Says yes to the name that the editor offers for the file. */
async function acceptName(name: string): Promise<void> {
  await until(`${name} offered`, () =>
    hands.evaluate<boolean>(
      `document.querySelector(".quick-input-widget input")?.value.endsWith(${JSON.stringify(name)}) ?? false`,
    ),
  );
  await hands.press("Enter");
}

describe("exporting the picture", () => {
  afterEach(closeAll);

  it("saves what is seen as SVG, beside the plan", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await hands.click({ selector: "button:has-text('Save SVG')", where: "preview" });
    await acceptName("plain.svg");
    const svg = new TextDecoder().decode(await bytesOf("plain.svg"));
    assert.match(svg, /^<svg [^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
    assert.match(svg, />60 3\/16</);
    assert.doesNotMatch(svg, /var\(--/);
  });

  it("saves a PNG by the command, which opens the preview where there is none", async () => {
    await openPlan("window.tileplan");
    void vscode.commands.executeCommand("gaugelath.exportPicture");
    await hands.waitFor({ selector: ".quick-input-list .monaco-list-row:has-text('PNG')" });
    await hands.type("PNG");
    await hands.press("Enter");
    await acceptName("window.png");
    const png = await bytesOf("window.png");
    assert.deepEqual([...png.slice(0, 8)], [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  });
});
