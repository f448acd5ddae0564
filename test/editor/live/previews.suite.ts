import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, planUri, replace, writePlan } from "../plans.js";
import { openPreview, previewTabs, ShownPreview } from "../preview.js";
import { until } from "../until.js";

describe("the previews", () => {
  afterEach(closeAll);

  it("have one that follows the text with the focus", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await openPlan("window.tileplan");
    await preview.untilDrawn("window sash");
    await openPlan("plain.tileplan");
    await preview.untilDrawn("60 3/16");
    assert.deepEqual(previewTabs(), ["Preview: plain.tileplan"]);
  });

  it("stay with a plan while the stock that it uses is changed, and show what becomes of it", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const stock = await openPlan("stock.tileplan");
    await replace(stock, "5 15/16 x 5 15/16", "6 1/2 x 5 15/16");
    await preview.untilListed("cut/sliver");
    assert.deepEqual(previewTabs(), ["Preview: plain.tileplan"]);
  });

  it("stay with their plan when they are pinned, and follow again after", async () => {
    await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const pin = { selector: "button[title^='Stay with']", where: "preview" } as const;
    await hands.click(pin);
    await until("the pin", () => previewTabs()[0] === "Pinned: plain.tileplan");
    await openPlan("window.tileplan");
    await preview.untilDrawn("60 3/16");
    assert.deepEqual(previewTabs(), ["Pinned: plain.tileplan"]);
    await hands.click(pin);
    await openPlan("window.tileplan");
    await preview.untilDrawn("window sash");
    assert.deepEqual(previewTabs(), ["Preview: window.tileplan"]);
  });

  it("are not opened twice for one plan", async () => {
    await openPlan("plain.tileplan");
    await openPreview();
    await openPreview();
    assert.equal(previewTabs().length, 1);
  });

  it("open from the button of the text's title, and from that of the outline", async () => {
    await openPlan("plain.tileplan");
    await hands.click({ selector: ".editor-actions [aria-label^='Open Preview to the Side']" });
    await new ShownPreview("plain.tileplan").untilDrawn("60 3/16");
    await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
    await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("outline.focus");
    const outline = ".pane-header:has-text('Outline')";
    await hands.hover({ selector: outline });
    await hands.click({ selector: `${outline} [aria-label^='Open Preview to the Side']` });
    await new ShownPreview("plain.tileplan").untilDrawn("60 3/16");
  });

  it("go with a plan that is renamed", async () => {
    const text = await vscode.workspace.fs.readFile(planUri("plain.tileplan"));
    await writePlan("old.tileplan", new TextDecoder().decode(text));
    await openPlan("old.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    const rename = new vscode.WorkspaceEdit();
    rename.renameFile(planUri("old.tileplan"), planUri("new.tileplan"));
    await vscode.workspace.applyEdit(rename);
    await until("the new name", () => previewTabs()[0] === "Preview: new.tileplan");
    await new ShownPreview("new.tileplan").untilDrawn("60 3/16");
    assert.equal(await preview.note(), null);
    await vscode.workspace.fs.delete(planUri("new.tileplan"));
  });

  it("mark the block where the cursor stands", async () => {
    const editor = await openPlan("window.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("window sash");
    const mark = (): Promise<string | null> =>
      preview.ask(`document.querySelector(".mark-cursor").getAttribute("d")`);
    const put = async (text: string): Promise<string> => {
      const before = await mark();
      const at = editor.document.positionAt(editor.document.getText().indexOf(text));
      editor.selection = new vscode.Selection(at, at);
      return until(`another mark for ${text}`, async () => {
        const now = await mark();
        return now !== before && now;
      });
    };
    const window = await put("size 24 x 36");
    const hole = await put("hole valve");
    assert.notEqual(window, hole);
  });
});
