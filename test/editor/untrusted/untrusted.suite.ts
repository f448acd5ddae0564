import assert from "node:assert/strict";
import * as vscode from "vscode";
import { findingOf } from "../findings.js";
import { openPlan, replace } from "../plans.js";
import { openPreview } from "../preview.js";

describe("in a workspace that is not trusted", () => {
  it("findings and the preview work as ever", async () => {
    assert.equal(vscode.workspace.isTrusted, false);
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
    const preview = await openPreview();
    await preview.untilDrawn("61");
  });
});
