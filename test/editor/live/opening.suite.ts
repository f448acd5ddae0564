import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";

describe("a plan in the editor", () => {
  it("has the language of its file's ending", async () => {
    const [file] = await vscode.workspace.findFiles("plain.tileplan");
    const document = await vscode.workspace.openTextDocument(file!);
    await vscode.window.showTextDocument(document);
    assert.equal(document.languageId, "tileplan");
    await hands.screenshot("opening");
  });
});
