import type * as vscode from "vscode";
import { activateWith } from "./activate.js";
import { startWorkerClient } from "./worker-client.js";

/** The extension in a browser: the server is a worker, and no process can be started. */
export function activate(context: vscode.ExtensionContext): void {
  activateWith(context, { createClient: startWorkerClient, readBlob: null });
}
