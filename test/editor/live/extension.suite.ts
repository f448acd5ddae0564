import assert from "node:assert/strict";
import * as vscode from "vscode";
import { closeAll, openPlan } from "../plans.js";

interface Manifest {
  readonly contributes: { readonly commands: readonly { readonly command: string }[] };
}

describe("the extension", () => {
  after(closeAll);

  it("answers every command that its manifest names", async () => {
    await openPlan("plain.tileplan");
    const extension = vscode.extensions.getExtension("gaugelath.gaugelath")!;
    await extension.activate();
    const { contributes } = extension.packageJSON as Manifest;
    const answered = new Set(await vscode.commands.getCommands(true));
    for (const { command } of contributes.commands) assert.ok(answered.has(command), command);
  });
});
