import assert from "node:assert/strict";
import * as vscode from "vscode";
import { comparisonOf, untilTold } from "../comparison.js";
import { hands } from "../hands.js";
import { closeAll, openPlan } from "../plans.js";
import { openPreview } from "../preview.js";

describe("the extension in a browser", () => {
  after(closeAll);

  it("runs in the browser's extension host, and shows the preview", async () => {
    await openPlan("plain.tileplan");
    const extension = vscode.extensions.getExtension("gaugelath.gaugelath")!;
    assert.equal(extension.extensionUri.scheme, "http");
    await extension.activate();
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await hands.screenshot("preview");
  });

  it("says that there is no Git in a browser, and compares two plans all the same", async () => {
    await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.compareLastCommit");
    await untilTold("Git extension doesn't run here");
    const picking = vscode.commands.executeCommand("gaugelath.comparePlan");
    await hands.waitFor({ selector: '.quick-input-list .monaco-list-row:has-text("window")' });
    await hands.type("window.tileplan");
    await hands.press("Enter");
    await picking;
    await (await comparisonOf("plain.tileplan")).untilSaid(/wall|plain|size/);
  });

  it("shows the setter's sheet", async () => {
    await openPlan("window.tileplan");
    await vscode.commands.executeCommand("gaugelath.openSheet");
    await hands.waitFor({ selector: "h2:has-text('Shopping list')", where: "frame:.pages" });
    await hands.waitFor({ selector: "figure svg", where: "frame:.pages" });
    await hands.screenshot("sheet");
  });

  it("has no task, where no process can be started", async () => {
    assert.deepEqual(await vscode.tasks.fetchTasks({ type: "gaugelath" }), []);
  });
});
