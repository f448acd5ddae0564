import assert from "node:assert/strict";
import * as vscode from "vscode";
import { closeAll, openPlan, openText, planUri, writePlan } from "../plans.js";
import { openPreview, type ShownPreview } from "../preview.js";
import { until } from "../until.js";

async function plainText(): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(planUri("plain.tileplan")));
}

/** Opens the preview of a plan of its own, and leaves its text without an editor. */
async function previewOf(name: string): Promise<ShownPreview> {
  await writePlan(name, await plainText());
  await openPlan(name);
  const preview = await openPreview();
  await preview.untilDrawn("60 3/16");
  return preview;
}

describe("a shown plan", () => {
  afterEach(async () => {
    await closeAll();
    for (const [name] of await vscode.workspace.fs.readDirectory(planUri("."))) {
      if (name.startsWith("shown-")) await vscode.workspace.fs.delete(planUri(name));
    }
  });

  it("is drawn anew when its file changes on disk, without an editor too", async () => {
    const preview = await previewOf("shown-changed.tileplan");
    await vscode.window.tabGroups.close(vscode.window.tabGroups.all[0]!.tabs);
    await writePlan("shown-changed.tileplan", (await plainText()).replace("60 3/16", "61"));
    await preview.untilDrawn("61");
  });

  it("is drawn anew when a file that it uses changes on disk", async () => {
    await writePlan("shown-stock.tileplan", "units inch\nlet width = 60 3/16\n");
    const text = (await plainText())
      .replace('use "stock.tileplan"', 'use "stock.tileplan"\nuse "shown-stock.tileplan"')
      .replace("size 60 3/16", "size width");
    await writePlan("shown-user.tileplan", text);
    await openPlan("shown-user.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await writePlan("shown-stock.tileplan", "units inch\nlet width = 61\n");
    await preview.untilDrawn("61");
  });

  it("keeps its picture under a note when its file is deleted, and comes back with it", async () => {
    const preview = await previewOf("shown-deleted.tileplan");
    await vscode.window.tabGroups.close(vscode.window.tabGroups.all[0]!.tabs);
    await vscode.workspace.fs.delete(planUri("shown-deleted.tileplan"));
    const note = await until("a note", () => preview.note());
    assert.equal(note, "shown-deleted.tileplan was deleted: this is its last picture.");
    await preview.untilDrawn("60 3/16");
    await writePlan("shown-deleted.tileplan", (await plainText()).replace("60 3/16", "61"));
    await preview.untilDrawn("61");
    assert.equal(await preview.note(), null);
  });

  it("keeps its picture when it was never saved and is closed", async () => {
    await openText(
      (await plainText())
        .replace('use "stock.tileplan"\n', "")
        .replace(
          "wall plain",
          'tile square "6 x 6" {\n  face 5 15/16 x 5 15/16\n  thickness 5/16\n}\nwall plain',
        ),
    );
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
    const note = await until("a note", () => preview.note());
    assert.match(note, /^Untitled-\d+ was closed: this is its last picture\.$/);
  });
});
