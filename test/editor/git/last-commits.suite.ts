import assert from "node:assert/strict";
import * as vscode from "vscode";
import { comparisonOf } from "../comparison.js";
import { hands } from "../hands.js";
import { openPlan, replace } from "../plans.js";
import { openPreview } from "../preview.js";
import { beginAnew, commitAll, refreshGit } from "../repository.js";
import { until } from "../until.js";

async function lenses(uri: vscode.Uri): Promise<string[]> {
  const found = await vscode.commands.executeCommand<vscode.CodeLens[]>(
    "vscode.executeCodeLensProvider",
    uri,
    20,
  );
  return found.map(({ command }) => command?.title ?? "");
}

const untilLenses = (uri: vscode.Uri, wanted: (titles: string[]) => boolean): Promise<string[]> =>
  until("other lenses", async () => {
    const titles = await lenses(uri);
    return wanted(titles) && titles;
  });

const setting = (value: boolean | undefined): Thenable<void> =>
  vscode.workspace
    .getConfiguration("gaugelath")
    .update("changes", value, vscode.ConfigurationTarget.Global);

describe("what changed since the last commit", () => {
  afterEach(async () => {
    await setting(undefined);
    await beginAnew();
  });

  it("stands in a lens over the wall as it is edited, and goes with the commit", async () => {
    const editor = await openPlan("plain.tileplan");
    const { uri } = editor.document;
    await untilLenses(uri, (titles) => titles.length === 0);
    await replace(editor, "60 3/16", "61");
    const [title] = await untilLenses(uri, (titles) => titles.length === 1);
    assert.match(title!, /^8 pieces new/);
    await hands.waitFor({ selector: `.codelens-decoration:has-text(${JSON.stringify(title)})` });
    await hands.screenshot("lens");
    await editor.document.save();
    commitAll("Wider");
    await refreshGit();
    await untilLenses(uri, (titles) => titles.length === 0);
    await hands.waitFor({ selector: ".codelens-decoration a", state: "detached" });
  });

  it("stands over the changed wall alone, and shows the comparison there", async () => {
    const editor = await openPlan("window.tileplan");
    const { uri } = editor.document;
    await editor.edit((edit) => {
      const end = editor.document.lineAt(editor.document.lineCount - 1).range.end;
      edit.insert(end, OTHER_WALL);
    });
    await editor.document.save();
    commitAll("Two walls");
    await refreshGit();
    await untilLenses(uri, (titles) => titles.length === 0);
    await replace(editor, "size 30 x 96", "size 32 x 96");
    await untilLenses(uri, (titles) => titles.length === 1);
    editor.revealRange(new vscode.Range(36, 0, 40, 0));
    await hands.click({ selector: ".codelens-decoration a" });
    const comparison = await comparisonOf("window.tileplan");
    await until("the wall", async () => (await comparison.wall()) === "side");
  });

  it("can be switched off", async () => {
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "60 3/16", "61");
    await untilLenses(editor.document.uri, (titles) => titles.length === 1);
    await setting(false);
    await untilLenses(editor.document.uri, (titles) => titles.length === 0);
  });

  it("is marked in the preview while one edits, and no longer when that is switched off", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await replace(editor, "60 3/16", "61");
    const card = `document.querySelector(".change-card:not([hidden]) p")?.textContent`;
    const said = await until("the card", () => preview.ask<string | undefined>(card));
    assert.match(said, /^Since the last commit, [0-9a-f]{7} "Begin": 8 new/);
    const marks = `document.querySelectorAll(".marks .change-fresh").length`;
    assert.equal(await preview.ask(marks), 1);
    await hands.screenshot("marks");
    await hands.click({ selector: 'button:has-text("Changes")', where: "preview" });
    await until("no mark", async () => (await preview.ask<number>(marks)) === 0);
    await hands.click({ selector: 'button:has-text("Changes")', where: "preview" });
    await until("the mark again", async () => (await preview.ask<number>(marks)) === 1);
    await hands.click({ selector: '.change-card button:has-text("Compare")', where: "preview" });
    await comparisonOf("plain.tileplan");
  });
});

const OTHER_WALL = `
wall side "Side wall" {
  size 30 x 96
  bottom pan movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8

  lay brick {
    bond running 1/2
    joint 1/16
    across full tile from left
    up full course from bottom
  }
}
`;
