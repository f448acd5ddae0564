import * as vscode from "vscode";
import { comparisonOf } from "../comparison.js";
import { hands } from "../hands.js";
import { openPlan, writePlan } from "../plans.js";
import { beginAnew, readPlan } from "../repository.js";

const run = (command: string): Thenable<unknown> =>
  vscode.commands.executeCommand(`gaugelath.${command}`);

describe("another plan to compare with", () => {
  afterEach(beginAnew);

  it("is picked among those of the workspace, and followed as it is written", async () => {
    const text = await readPlan("plain.tileplan");
    await writePlan("other wall.tileplan", text.replace("60 3/16", "59"));
    await openPlan("plain.tileplan");
    const picking = run("comparePlan");
    await hands.waitFor({ selector: '.quick-input-list .monaco-list-row:has-text("other wall")' });
    await hands.type("other wall");
    await hands.press("Enter");
    await picking;
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilAgainst(/against other wall\.tileplan as it is now$/);
    await comparison.untilSaid(/59 in x 48 3\/16 in -> 60 3\/16 in x 48 3\/16 in/);
    // It is followed, too.
    await writePlan("other wall.tileplan", text);
    await comparison.untilSaid(/^Nothing changed but the text\.$/);
  });
});
