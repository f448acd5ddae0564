import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import * as vscode from "vscode";
import { comparisonOf } from "../comparison.js";
import { openPlan, planUri, replace, writePlan } from "../plans.js";
import { beginAnew, commitAll, git, readPlan, refreshGit } from "../repository.js";

const compare = (): Thenable<unknown> =>
  vscode.commands.executeCommand("gaugelath.compareLastCommit");

describe("a plan's history", () => {
  afterEach(beginAnew);

  it("has the files that a plan uses as they were, too", async () => {
    const stock = await readPlan("stock.tileplan");
    await writePlan(
      "stock.tileplan",
      stock.replace("face 5 15/16 x 5 15/16", "face 5 3/4 x 5 3/4"),
    );
    await openPlan("plain.tileplan");
    await compare();
    const comparison = await comparisonOf("plain.tileplan");
    await comparison.untilSaid(
      /tile square, face: 5 15\/16 in x 5 15\/16 in -> 5 3\/4 in x 5 3\/4 in/,
    );
  });

  it("is read as it was committed, not as git shows it to people", async () => {
    writeFileSync(planUri(".gitattributes").fsPath, "*.tileplan diff=tileplan\n");
    git(["config", "diff.tileplan.textconv", "wc -c"]);
    try {
      commitAll("Plans are shown in numbers");
      const editor = await openPlan("plain.tileplan");
      await replace(editor, "60 3/16", "59");
      await compare();
      await (await comparisonOf("plain.tileplan")).untilSaid(/60 3\/16 in x 48 3\/16 in -> 59 in/);
    } finally {
      git(["config", "--unset", "diff.tileplan.textconv"]);
    }
  });

  it("finds plans whose paths have spaces and letters of other alphabets", async () => {
    const name = "ванная №1/Wand über der Wanne é.tileplan";
    mkdirSync(path.dirname(planUri(name).fsPath));
    const text = (await readPlan("plain.tileplan")).replace("stock.tileplan", "../stock.tileplan");
    writeFileSync(planUri(name).fsPath, text);
    commitAll("Another bath");
    const editor = await openPlan(name);
    await replace(editor, "60 3/16", "59");
    await compare();
    const comparison = await comparisonOf("Wand über der Wanne é.tileplan");
    await comparison.untilSaid(/60 3\/16 in x 48 3\/16 in -> 59 in/);
  });

  it("follows a plan that git knows to be renamed", async () => {
    git(["mv", "plain.tileplan", "bath.tileplan"]);
    await refreshGit();
    const editor = await openPlan("bath.tileplan");
    await replace(editor, "60 3/16", "59");
    await compare();
    const comparison = await comparisonOf("bath.tileplan");
    await comparison.untilSaid(/60 3\/16 in x 48 3\/16 in -> 59 in/);
  });
});
