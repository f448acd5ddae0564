import assert from "node:assert/strict";
import * as vscode from "vscode";
import { closeAll, openPlan } from "../plans.js";

describe("the extension where there is Node", () => {
  after(closeAll);

  it("has a task, since a process can be started", async () => {
    await openPlan("plain.tileplan");
    const [task] = await vscode.tasks.fetchTasks({ type: "gaugelath" });
    assert.match(task!.name, /^check all plans of /);
  });
});
