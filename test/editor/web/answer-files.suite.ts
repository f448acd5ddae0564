import assert from "node:assert/strict";
import * as vscode from "vscode";
import { codesOf, findingOf } from "../findings.js";
import { closeAll, openPlan, rangeOf, replace } from "../plans.js";
import { until } from "../until.js";

// A worker reaches no file itself: all of these come by way of the extension.
describe("files for a server that can't reach them", () => {
  afterEach(closeAll);

  it("are read: the tile of a used file is known", async () => {
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "size 60 3/16", "size 61");
    await findingOf(editor.document.uri, "cut/sliver");
    assert.ok(!codesOf(editor.document.uri).some((code) => code.startsWith("name/")));
  });

  it("are found: a name is renamed in plans that are not open", async () => {
    const { document } = await openPlan("stock.tileplan");
    const at = rangeOf(document, "square").start;
    const edit = await until("the edit", () =>
      vscode.commands.executeCommand<vscode.WorkspaceEdit | undefined>(
        "vscode.executeDocumentRenameProvider",
        document.uri,
        at,
        "six-inch",
      ),
    );
    const files = edit.entries().map(([{ path }]) => path.slice(path.lastIndexOf("/") + 1));
    assert.deepEqual(files.sort(), ["plain.tileplan", "stock.tileplan"]);
  });
});
