import assert from "node:assert/strict";
import * as vscode from "vscode";
import { findingOf } from "../findings.js";
import { closeAll, planUri, writePlan } from "../plans.js";

/** Runs a task to its end; its exit code. */
async function runTask(task: vscode.Task): Promise<number | undefined> {
  const ended = new Promise<number | undefined>((resolve) => {
    const listener = vscode.tasks.onDidEndTaskProcess(({ execution, exitCode }) => {
      if (execution.task.name !== task.name) return;
      listener.dispose();
      resolve(exitCode);
    });
  });
  await vscode.tasks.executeTask(task);
  return ended;
}

describe("the task `gaugelath check`", () => {
  after(async () => {
    await vscode.workspace.fs.delete(planUri("task.tileplan"));
    await closeAll();
  });

  it("checks the folder's plans, and its findings are problems", async () => {
    const text = new TextDecoder().decode(
      await vscode.workspace.fs.readFile(planUri("plain.tileplan")),
    );
    await writePlan("task.tileplan", text.replace("60 3/16", "61"));
    const tasks = await vscode.tasks.fetchTasks({ type: "gaugelath" });
    assert.deepEqual(
      tasks.map(({ name }) => name),
      ["check all plans of workspace"],
    );
    assert.equal(await runTask(tasks[0]!), 1);
    const sliver = await findingOf(planUri("task.tileplan"), "cut/sliver");
    assert.equal(sliver.severity, vscode.DiagnosticSeverity.Error);
    assert.equal(sliver.source, "gaugelath");
    const note = await findingOf(planUri("task.tileplan"), "balance/unequal-ends");
    assert.equal(note.severity, vscode.DiagnosticSeverity.Information);
  });
});
