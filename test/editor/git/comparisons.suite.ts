import assert from "node:assert/strict";
import * as vscode from "vscode";
import { comparisonOf, comparisonTabs } from "../comparison.js";
import { openPlan, replace } from "../plans.js";
import { beginAnew } from "../repository.js";

const compare = (): Thenable<unknown> =>
  vscode.commands.executeCommand("gaugelath.compareLastCommit");

describe("comparisons", () => {
  afterEach(beginAnew);

  it("are one for each plan, beside its text", async () => {
    const editor = await openPlan("plain.tileplan");
    await compare();
    await comparisonOf("plain.tileplan");
    assert.equal(vscode.window.tabGroups.all.length, 2);
    await openPlan("plain.tileplan");
    await compare();
    assert.deepEqual(comparisonTabs(), ["Changes: plain.tileplan"]);
    await openPlan("window.tileplan");
    await compare();
    await comparisonOf("window.tileplan");
    assert.deepEqual(comparisonTabs(), ["Changes: plain.tileplan", "Changes: window.tileplan"]);
    assert.equal(editor.document.isDirty, false);
  });

  it("go on when the server is restarted", async () => {
    const editor = await openPlan("plain.tileplan");
    await compare();
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilSaid(/^Nothing changed/);
    await vscode.commands.executeCommand("gaugelath.restartServer");
    await replace(editor, "60 3/16", "59");
    await comparison.untilSaid(/59 in x 48 3\/16 in/);
  });
});
