import assert from "node:assert/strict";
import * as vscode from "vscode";
import { sheetBeside } from "../../../src/extension/save-sheet.js";
import { planUri } from "../plans.js";

describe("where a sheet is saved", () => {
  it("is beside the plan, under its name", () => {
    const file = sheetBeside(planUri("window.tileplan"), "pdf");
    assert.equal(file.toString(), planUri("window.pdf").toString());
  });

  it("is the workspace's folder for a plan that was never saved", () => {
    const untitled = vscode.Uri.parse("untitled:Untitled-1");
    const folder = vscode.workspace.workspaceFolders![0]!.uri;
    assert.equal(
      sheetBeside(untitled, "csv").toString(),
      vscode.Uri.joinPath(folder, "Untitled-1.csv").toString(),
    );
  });
});
