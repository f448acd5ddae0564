import * as vscode from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { CLIENT_ID, CLIENT_NAME, clientOptions } from "./client-options.js";

/** A client of the server in a process of its own; it starts with its first message. */
export function startNodeClient(extensionUri: vscode.Uri): LanguageClient {
  const module = vscode.Uri.joinPath(extensionUri, "dist", "server.js").fsPath;
  const server = { module, transport: TransportKind.ipc };
  return new LanguageClient(CLIENT_ID, CLIENT_NAME, server, clientOptions());
}
