import * as vscode from "vscode";
import { findingOf } from "../findings.js";
import { closeAll, openPlan, replace } from "../plans.js";
import { openPreview } from "../preview.js";

describe("the language server", () => {
  afterEach(closeAll);

  it("goes on after it was restarted: findings, and the preview that was open", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await vscode.commands.executeCommand("gaugelath.restartServer");
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
    await preview.untilDrawn("61");
  });
});
