import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, rangeOf, replace } from "../plans.js";
import { openPreview, previewTabs, ShownPreview } from "../preview.js";
import { until } from "../until.js";

/** Waits until the text's selection begins on the line of a text. */
function untilOnLine(editor: vscode.TextEditor, text: string): Promise<true> {
  const { line } = rangeOf(editor.document, text).start;
  return until(`the line of ${text}`, () => {
    const active = vscode.window.activeTextEditor;
    return active?.document === editor.document && active.selection.start.line === line;
  }).then(() => true);
}

describe("from the preview to the text", () => {
  afterEach(closeAll);

  it("a click on a piece selects the line that made it", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const { x, y } = await preview.middleOf("plain");
    await hands.mouse("click", x + 10, y + 10);
    await untilOnLine(editor, "lay square");
  });

  it("a click on a finding selects its line", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await replace(editor, "left wall movement 1/8", "left wall movement 1/16");
    await preview.untilListed("movement/narrow");
    const finding = ".findings button:has-text('movement/narrow')";
    await hands.click({ selector: finding, where: "preview" });
    await untilOnLine(editor, "left wall movement");
  });

  it("opens the text again when it was closed", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await hands.click({ selector: "button[title^='Stay with']", where: "preview" });
    const first = vscode.window.tabGroups.all[0]!;
    await vscode.window.tabGroups.close(first.tabs);
    assert.equal(vscode.window.visibleTextEditors.length, 0);
    const { x, y } = await preview.middleOf("plain");
    await hands.mouse("click", x + 10, y + 10);
    const editor = await until("the text", () => vscode.window.visibleTextEditors[0]);
    assert.ok(editor.document.uri.path.endsWith("/plain.tileplan"));
  });

  it("leaves a preview standing that is in the text's column", async () => {
    await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.openPreview");
    const preview = new ShownPreview("plain.tileplan");
    await preview.untilDrawn("60 3/16");
    const [first] = vscode.window.tabGroups.all;
    const text = first!.tabs.filter(({ input }) => input instanceof vscode.TabInputText);
    await vscode.window.tabGroups.close(text);
    const { x, y } = await preview.middleOf("plain");
    await hands.mouse("click", x + 10, y + 10);
    const editor = await until("the text", () => vscode.window.visibleTextEditors[0]);
    assert.equal(editor.viewColumn, vscode.ViewColumn.Two);
    assert.deepEqual(previewTabs(), ["Preview: plain.tileplan"]);
  });
});
