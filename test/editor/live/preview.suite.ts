import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { openPlan } from "../plans.js";

describe("the preview", () => {
  it("opens beside the text, and leaves the focus there", async () => {
    const editor = await openPlan("plain.tileplan");
    await vscode.commands.executeCommand("gaugelath.openPreviewToSide");
    await hands.waitFor({ selector: "main", where: "preview", state: "attached" });
    assert.equal(vscode.window.activeTextEditor?.document, editor.document);
    await hands.screenshot("preview");
    assert.equal(
      await hands.evaluate(
        "document.querySelector('meta[http-equiv]').content.includes(\"default-src 'none'\")",
        "preview",
      ),
      true,
    );
  });
});
