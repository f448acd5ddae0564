import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan } from "../plans.js";
import { until } from "../until.js";

// The first of the suites: nothing was opened before it.
describe("activation", () => {
  const extension = vscode.extensions.getExtension("gaugelath.gaugelath")!;
  after(closeAll);

  it("waits for a plan", async () => {
    const notes = await vscode.workspace.openTextDocument({ language: "markdown", content: "# x" });
    await vscode.window.showTextDocument(notes);
    assert.equal(extension.isActive, false);
  });

  it("comes with a plan; how long it takes is told", async () => {
    await openPlan("plain.tileplan");
    await until("activation", () => extension.isActive);
    await vscode.commands.executeCommand("workbench.action.showRuntimeExtensions");
    const shown = "[...document.querySelectorAll('.runtime-extensions-editor .monaco-list-row')]";
    const mine = `${shown}.find((each) => each.textContent.includes("gaugelath.gaugelath"))`;
    // As the editor measures it: loading the code, and the call of activate.
    const words = await until("the time of activation", () =>
      hands.evaluate<string | null>(`${mine}?.querySelector(".activation-time")?.textContent`),
    );
    await hands.tell(`        ${words}`);
    assert.match(words, /Activation: \d+ms/);
  });
});
