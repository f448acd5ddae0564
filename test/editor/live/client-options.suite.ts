import assert from "node:assert/strict";
import * as vscode from "vscode";
import { codesOf, findingOf, noFindingOf } from "../findings.js";
import { hands } from "../hands.js";
import { closeAll, openPlan, openText, rangeOf } from "../plans.js";
import { until } from "../until.js";

describe("findings in the editor", () => {
  afterEach(closeAll);

  it("come as one types, and go when it is mended", async () => {
    const editor = await openPlan("plain.tileplan");
    const { document } = editor;
    const size = rangeOf(document, "60 3/16");
    editor.selection = new vscode.Selection(size.start, size.end);
    await hands.type("61");
    const sliver = await findingOf(document.uri, "cut/sliver");
    assert.equal(sliver.severity, vscode.DiagnosticSeverity.Error);
    assert.match(sliver.message, /3\/4 in wide; at least .* is wanted/);
    await hands.press("Control+Z");
    await hands.press("Control+Z");
    await noFindingOf(document.uri, "cut/sliver");
  });

  it("are told of a plan that is not saved anywhere", async () => {
    const { document } = await openText("units inch\nbed 1 8/7\n");
    const codes = await until("a finding", () => {
      const found = codesOf(document.uri);
      return found.length > 0 && found;
    });
    assert.match(codes[0]!, /^syntax\//);
  });

  it("follow the file that a plan uses, before it is saved", async () => {
    const { document } = await openPlan("plain.tileplan");
    const stock = await openPlan("stock.tileplan");
    const face = rangeOf(stock.document, "5 15/16 x 5 15/16");
    await stock.edit((edit) => edit.replace(face, "6 1/2 x 5 15/16"));
    await findingOf(document.uri, "cut/sliver");
    await vscode.commands.executeCommand("undo");
    await noFindingOf(document.uri, "cut/sliver");
  });
});
