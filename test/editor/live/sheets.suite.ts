import assert from "node:assert/strict";
import * as vscode from "vscode";
import { closeAll, openPlan } from "../plans.js";
import { until } from "../until.js";

describe("the open sheets", () => {
  afterEach(closeAll);

  it("are of the plan with the focus, each under its own name", async () => {
    for (const name of ["plain.tileplan", "window.tileplan"]) {
      await openPlan(name);
      await vscode.commands.executeCommand("gaugelath.openSheet");
      await until(name, () =>
        vscode.window.tabGroups.all
          .flatMap(({ tabs }) => tabs)
          .some(({ label }) => label === `Sheet: ${name}`),
      );
    }
    const commands = await vscode.commands.getCommands(true);
    assert.ok(commands.includes("gaugelath.saveSheet"));
  });
});
