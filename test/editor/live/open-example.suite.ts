import assert from "node:assert/strict";
import * as vscode from "vscode";
import { closeAll } from "../plans.js";
import { openPreview } from "../preview.js";
import { until } from "../until.js";

describe("the example of the walkthrough", () => {
  afterEach(closeAll);

  it("opens as a plan of one's own, with no fault in it", async () => {
    await vscode.commands.executeCommand("gaugelath.openExample");
    const editor = await until("the example", () => vscode.window.activeTextEditor);
    assert.equal(editor.document.languageId, "tileplan");
    assert.equal(editor.document.isUntitled, true);
    const preview = await openPreview();
    await preview.untilDrawn("window sash");
    const errors = vscode.languages
      .getDiagnostics(editor.document.uri)
      .filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
    assert.deepEqual(errors, []);
  });

  it("stands in the walkthrough's first step", async () => {
    const walkthrough = "gaugelath.gaugelath#firstWall";
    await vscode.commands.executeCommand("workbench.action.openWalkthrough", walkthrough, false);
    const { hands } = await import("../hands.js");
    await hands.waitFor({ selector: ".getting-started-step:has-text('Write the wall down')" });
    await hands.screenshot("walkthrough");
  });
});
