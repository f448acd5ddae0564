import * as vscode from "vscode";
import { findingOf, noFindingOf } from "../findings.js";
import { closeAll, openPlan, replace } from "../plans.js";

describe("the server in a worker", () => {
  afterEach(closeAll);

  it("tells what typing brings", async () => {
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
    await replace(editor, "61", "60 3/16");
    await noFindingOf(editor.document.uri, "cut/sliver");
  });

  it("goes on after it was restarted", async () => {
    const editor = await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.restartServer");
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
  });
});
