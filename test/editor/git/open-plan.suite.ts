import * as vscode from "vscode";
import { movedWindow } from "../moved-window.js";
import { planUri, replace } from "../plans.js";
import { beginAnew } from "../repository.js";

describe("a plan that is kept open for its comparison", () => {
  afterEach(beginAnew);

  it("keeps what it shows, under a note, while the text is broken or its file is gone", async () => {
    const { editor, comparison } = await movedWindow();
    await replace(editor, "size 60 x 96", "size 60 x");
    await comparison.untilNote(/^Part of the text could not be understood/);
    await comparison.untilSaid(/window sash moves right 2 in/);
    await vscode.commands.executeCommand("undo");
    await editor.document.save();
    await vscode.workspace.fs.delete(planUri("window.tileplan"));
    await comparison.untilNote(/window\.tileplan was deleted/);
  });
});
