import assert from "node:assert/strict";
import * as vscode from "vscode";
import { findingOf, noFindingOf } from "../findings.js";
import { hands } from "../hands.js";
import { openPlan, planUri, replace } from "../plans.js";

describe("the extension in a browser", () => {
  it("runs in the browser's extension host, its server in a worker", async () => {
    await openPlan("plain.tileplan");
    const extension = vscode.extensions.getExtension("gaugelath.gaugelath");
    assert.ok(extension);
    await extension.activate();
    assert.equal(extension.extensionUri.scheme, "http");
  });

  it("reads the file that the plan uses, and tells what typing brings", async () => {
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "60 3/16", "61");
    await findingOf(planUri("plain.tileplan"), "cut/sliver");
    await replace(editor, "61", "60 3/16");
    await noFindingOf(planUri("plain.tileplan"), "cut/sliver");
  });

  it("shows the preview", async () => {
    await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.openPreviewToSide");
    await hands.waitFor({ selector: "svg [data-wall='plain']", where: "preview" });
    await hands.screenshot("preview");
  });
});
