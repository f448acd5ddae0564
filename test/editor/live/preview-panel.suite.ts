import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, rangeOf, replace } from "../plans.js";
import { openPreview, ShownPreview } from "../preview.js";
import { until } from "../until.js";

/** A person's pause: the preview keeps its view once it has rested for a moment. */
function settle(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 500));
}

describe("a preview", () => {
  afterEach(closeAll);

  it("opens beside the text, which keeps the focus", async () => {
    const { document } = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    assert.equal(vscode.window.activeTextEditor?.document, document);
    assert.equal(vscode.window.tabGroups.all.length, 2);
    assert.equal(vscode.window.tabGroups.all[1]!.activeTab?.label, "Preview: plain.tileplan");
  });

  it("is drawn anew at every keystroke, and lists what is found", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const size = rangeOf(editor.document, "60 3/16");
    editor.selection = new vscode.Selection(size.start, size.end);
    await hands.untilInText();
    await hands.type("61");
    await preview.untilDrawn("61");
    await preview.untilListed("cut/sliver");
    await hands.screenshot("preview-sliver");
  });

  it("keeps its zoom and its place while the plan changes", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const stage = await hands.boxOf({ selector: ".stage", where: "preview" });
    await hands.mouse("move", stage.x + 60, stage.y + 60);
    await hands.click({ selector: "button[aria-label='Zoom in']", where: "preview" });
    await hands.click({ selector: "button[aria-label='Zoom in']", where: "preview" });
    const before = await preview.view();
    await replace(editor, "60 3/16", "61");
    await preview.untilDrawn("61");
    assert.deepEqual(await preview.view(), before);
  });

  it("keeps its last whole picture under a note while the text is broken", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await replace(editor, "size 60 3/16 x 48 3/16", "size 60 3/16 x");
    const note = await until("a note", () => preview.note());
    assert.match(note, /could not be understood/);
    await preview.untilDrawn("60 3/16");
    await vscode.commands.executeCommand("undo");
    await until("no note", async () => (await preview.note()) === null);
  });

  it("is itself again when it was hidden: the same zoom, the newest text", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await hands.click({ selector: "button[aria-label='Zoom in']", where: "preview" });
    const before = await preview.view();
    await settle();
    const group = vscode.window.tabGroups.all[1]!;
    await vscode.window.showTextDocument(editor.document, group.viewColumn);
    await replace(editor, "60 3/16", "61");
    await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
    await vscode.commands.executeCommand("gaugelath.openPreviewToSide");
    await preview.untilDrawn("61");
    assert.equal((await preview.view()).zoom, before.zoom);
  });

  it("tells what a piece is when it is pointed at", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const { x, y } = await preview.middleOf("plain");
    await hands.mouse("move", x + 10, y + 10);
    const words = await until("a reading", () =>
      preview.ask<string | null>(
        `document.querySelector(".stage .reading:not([hidden])")?.textContent`,
      ),
    );
    assert.match(words, /5 15\/16/);
    await hands.screenshot("preview-reading");
  });

  it("shows two plans at once, each its own", async () => {
    await openPlan("plain.tileplan");
    const first = await openPreview();
    await first.untilDrawn("60 3/16");
    await hands.click({ selector: "button[title^='Stay with']", where: "preview" });
    await until("the pin", () =>
      vscode.window.tabGroups.all[1]!.activeTab?.label.startsWith("Pinned"),
    );
    const { document } = await openPlan("window.tileplan");
    await vscode.commands.executeCommand("workbench.action.splitEditorDown");
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    await openPreview();
    assert.equal(
      vscode.window.tabGroups.all
        .flatMap(({ tabs }) => tabs)
        .filter(({ input }) => input instanceof vscode.TabInputWebview).length,
      2,
    );
    await new ShownPreview("window.tileplan").untilDrawn("window sash");
    await hands.screenshot("preview-two");
  });
});
