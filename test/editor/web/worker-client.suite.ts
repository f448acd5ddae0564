import assert from "node:assert/strict";
import * as vscode from "vscode";
import { startWorkerClient } from "../../../src/extension/worker-client.js";
import { PRINT_SHEET, type PrintedFile } from "../../../src/server/protocol.js";
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

  it("prints a sheet, with what it fetches from where its script stands", async () => {
    const { extensionUri } = vscode.extensions.getExtension("gaugelath.gaugelath")!;
    const { document } = await openPlan("window.tileplan");
    const client = startWorkerClient(extensionUri);
    await client.start();
    try {
      const asked = { uri: document.uri.toString(), format: "pdf" };
      const printed = await client.sendRequest<PrintedFile[] | null>(PRINT_SHEET, asked);
      assert.match(atob(printed![0]!.data), /^%PDF-1\.7[^]*%%EOF\s*$/);
    } finally {
      await client.dispose();
    }
  });
});
