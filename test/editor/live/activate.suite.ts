import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import path from "node:path";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan } from "../plans.js";
import { until } from "../until.js";

function isServerRunning(extensionPath: string): boolean {
  const server = path.join(extensionPath, "dist", "server.js");
  return execFileSync("ps", ["-eo", "args"], { encoding: "utf8" }).includes(server);
}

// The first of the suites: nothing was opened before it.
describe("activation", () => {
  const extension = vscode.extensions.getExtension("gaugelath.gaugelath")!;
  after(closeAll);

  it("comes with a workspace that has plans, and starts no server before one is opened", async () => {
    await until("activation", () => extension.isActive);
    const notes = await vscode.workspace.openTextDocument({ language: "markdown", content: "# x" });
    await vscode.window.showTextDocument(notes);
    assert.equal(isServerRunning(extension.extensionPath), false);
    await openPlan("plain.tileplan");
    await until("the server", () => isServerRunning(extension.extensionPath));
  });

  it("takes a time that is told", async () => {
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
