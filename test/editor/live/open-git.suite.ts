import * as vscode from "vscode";
import { comparisonOf, untilTold } from "../comparison.js";
import { hands } from "../hands.js";
import { closeAll, openPlan, planUri, replace, writePlan } from "../plans.js";
import { openPreview } from "../preview.js";
import { until } from "../until.js";

// The editor's Git is off in this sitting.
describe("without Git", () => {
  afterEach(closeAll);

  it("the commands say why there is no commit to compare with", async () => {
    await openPlan("plain.tileplan");
    for (const command of ["compareLastCommit", "compareRevision"]) {
      await vscode.commands.executeCommand(`gaugelath.${command}`);
      await untilTold("Git is off in the editor's settings (git.enabled)");
    }
  });

  it("two plans are compared all the same", async () => {
    const text = new TextDecoder().decode(
      await vscode.workspace.fs.readFile(planUri("plain.tileplan")),
    );
    await writePlan("another.tileplan", text.replace("60 3/16", "59"));
    await openPlan("plain.tileplan");
    const picking = vscode.commands.executeCommand("gaugelath.comparePlan");
    await hands.waitFor({ selector: '.quick-input-list .monaco-list-row:has-text("another")' });
    await hands.type("another.tileplan");
    await hands.press("Enter");
    await picking;
    await (await comparisonOf("plain.tileplan")).untilSaid(/59 in x 48 3\/16 in -> 60 3\/16 in/);
    await vscode.workspace.fs.delete(planUri("another.tileplan"));
  });

  it("the preview marks what changed since it opened, and says so", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await replace(editor, "60 3/16", "61");
    const card = `document.querySelector(".change-card:not([hidden]) p")?.textContent`;
    await until("the card", async () =>
      /^Since this preview opened: \d+ new/.test(
        (await preview.ask<string | undefined>(card)) ?? "",
      ),
    );
  });
});
