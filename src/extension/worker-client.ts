/// <reference lib="webworker" />
import * as vscode from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions } from "./client-options.js";

/** A client of the server in a worker. */
export function startWorkerClient(extensionUri: vscode.Uri): LanguageClient {
  const script = vscode.Uri.joinPath(extensionUri, "dist", "server.web.js");
  const server = (): Promise<Worker> => Promise.resolve(new Worker(script.toString(true)));
  return new LanguageClient(CLIENT_ID, CLIENT_NAME, server, clientOptions());
}
