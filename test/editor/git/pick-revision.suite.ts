import * as vscode from "vscode";
import { comparisonOf, untilTold } from "../comparison.js";
import { hands } from "../hands.js";
import { openPlan, planUri, replace, writePlan } from "../plans.js";
import { beginAnew, commitAll, git, readPlan } from "../repository.js";
import { workspaceFolder } from "../task.js";

const run = (command: string): Thenable<unknown> =>
  vscode.commands.executeCommand(`gaugelath.${command}`);

describe("a revision to compare with", () => {
  afterEach(beginAnew);

  it("is picked among the plan's commits", async () => {
    await writePlan("plain.tileplan", (await readPlan("plain.tileplan")).replace("60 3/16", "59"));
    commitAll("Narrower by a plank");
    await openPlan("plain.tileplan");
    const picking = run("compareRevision");
    await hands.waitFor({ selector: '.quick-input-list .monaco-list-row:has-text("Begin")' });
    await hands.screenshot("pick-revision");
    await hands.type("Begin");
    await hands.press("Enter");
    await picking;
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilAgainst(/against commit [0-9a-f]{7} "Begin"$/);
    await comparison.untilSaid(/59 in x 48 3\/16 in/);
  });

  it("is a branch or a tag, too", async () => {
    git(["tag", "as-measured"]);
    const editor = await openPlan("plain.tileplan");
    await replace(editor, "60 3/16", "59");
    const picking = run("compareRevision");
    await hands.waitFor({ selector: '.quick-input-list .monaco-list-row:has-text("as-measured")' });
    await hands.type("as-measured");
    await hands.press("Enter");
    await picking;
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilAgainst(/against as-measured, commit/);
    git(["tag", "-d", "as-measured"]);
  });

  it("says where the history ends, in a clone without its older commits", async () => {
    await writePlan("plain.tileplan", (await readPlan("plain.tileplan")).replace("60 3/16", "59"));
    commitAll("Narrower");
    const clone = planUri("clone").fsPath;
    git(["clone", "-q", "--depth", "1", `file://${workspaceFolder().fsPath}`, clone]);
    await vscode.commands.executeCommand("git.openRepository", clone);
    await openPlan("clone/plain.tileplan");
    const picking = vscode.commands.executeCommand("gaugelath.compareRevision");
    await hands.waitFor({ selector: ".quick-input-list :text('Older commits are not here')" });
    await hands.screenshot("shallow-history");
    await hands.type("Another revision");
    await hands.press("Enter");
    await hands.waitFor({ selector: ".quick-input-box input" });
    await hands.type("HEAD~1");
    await hands.press("Enter");
    await picking;
    await untilTold('The repository has no revision "HEAD~1". Its history is shallow');
  });
});
