import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan } from "../plans.js";
import { openPreview, previewTabs } from "../preview.js";
import { until } from "../until.js";

const settings = (): vscode.WorkspaceConfiguration =>
  vscode.workspace.getConfiguration("gaugelath");

describe("where the preview opens", () => {
  afterEach(async () => {
    await closeAll();
    await settings().update("preview.side", undefined, vscode.ConfigurationTarget.Global);
  });

  it("below the text, when the settings say so", async () => {
    await settings().update("preview.side", "below", vscode.ConfigurationTarget.Global);
    const { document } = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const [text, shown] = await Promise.all([
      hands.boxOf({ selector: ".editor-instance .monaco-editor" }),
      hands.boxOf({ selector: ".stage", where: "preview" }),
    ]);
    assert.ok(shown.y > text.y + text.height - 1, JSON.stringify({ text, shown }));
    assert.equal(vscode.window.activeTextEditor?.document, document);
  });

  it("in the text's own column by the plain command", async () => {
    await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.openPreview");
    await until("the preview", () => previewTabs()[0] === "Preview: plain.tileplan");
    assert.equal(vscode.window.tabGroups.all.length, 1);
  });

  it("nowhere without a plan: it says what to do", async () => {
    await vscode.commands.executeCommand("gaugelath.openPreview");
    await vscode.commands.executeCommand("notifications.showList");
    await hands.waitFor({ selector: ".notification-list-item:has-text('Open a plan first')" });
    await vscode.commands.executeCommand("notifications.clearAll");
    assert.deepEqual(previewTabs(), []);
  });
});
