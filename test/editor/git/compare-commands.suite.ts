import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import * as vscode from "vscode";
import { comparisonOf, untilTold } from "../comparison.js";
import { hands } from "../hands.js";
import { openPlan, openText, planUri, replace, writePlan } from "../plans.js";
import { beginAnew, readPlan, refreshGit } from "../repository.js";

const run = (command: string, ...args: unknown[]): Thenable<unknown> =>
  vscode.commands.executeCommand(`gaugelath.${command}`, ...args);

describe("commands that compare walls", () => {
  afterEach(beginAnew);

  it("compare with the last commit, and follow the text as it is edited", async () => {
    const editor = await openPlan("plain.tileplan");
    await run("compareLastCommit");
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilAgainst(
      /^plain\.tileplan as it is now, against the last commit, .* "Begin"$/,
    );
    await comparison.untilSaid(/^Nothing changed but the text\.$/);
    await replace(editor, "60 3/16", "59");
    await comparison.untilSaid(
      /^60 3\/16 in x 48 3\/16 in -> 59 in x 48 3\/16 in|59 in x 48 3\/16 in/,
    );
    await hands.screenshot("compare-last-commit");
  });

  it("compare the entry of a plan in the source control view", async () => {
    await writePlan("plain.tileplan", (await readPlan("plain.tileplan")).replace("60 3/16", "59"));
    await vscode.commands.executeCommand("workbench.view.scm");
    await refreshGit();
    const entry = '.scm-view .monaco-list-row:has-text("plain.tileplan")';
    await hands.click({ selector: entry }, { button: "right" });
    await hands.screenshot("source-control-entry");
    const item = '.monaco-menu .action-label[aria-label="Compare Walls with the Last Commit"]';
    await hands.click({ selector: item });
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilSaid(/59 in x 48 3\/16 in/);
    await vscode.commands.executeCommand("workbench.view.explorer");
  });

  it("say that a file is no plan, and that none is open", async () => {
    await run("compareLastCommit", planUri("notes.md"));
    await untilTold("notes.md is no plan");
    await run("compareLastCommit");
    await untilTold("Open a plan first");
  });

  it("say why a plan that was never saved or committed has nothing to compare with", async () => {
    await openText("units inch\n");
    await run("compareLastCommit");
    await untilTold("was never saved, so no commit has it");
    await writePlan("new.tileplan", await readPlan("plain.tileplan"));
    await run("compareLastCommit", planUri("new.tileplan"));
    await untilTold("new.tileplan is not in the last commit");
  });

  it("say that a plan outside of every repository has no commit", async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-outside-"));
    try {
      const file = path.join(folder, "outside.tileplan");
      writeFileSync(file, "units inch\n");
      await run("compareLastCommit", vscode.Uri.file(file));
      await untilTold("outside.tileplan is in no Git repository");
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
