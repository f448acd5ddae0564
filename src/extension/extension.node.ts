import * as vscode from "vscode";
import { activateWith } from "./activate.js";
import { CheckTasks } from "./check-tasks.js";
import { startNodeClient } from "./node-client.js";
import { readBlob } from "./read-blob.js";

/** The extension on the desktop and on a remote machine: the server is a process of its own. */
export function activate(context: vscode.ExtensionContext): void {
  activateWith(context, { createClient: startNodeClient, readBlob });
  context.subscriptions.push(
    vscode.tasks.registerTaskProvider(CheckTasks.type, new CheckTasks(context.extensionUri)),
  );
}
