/// <reference lib="webworker" />
import * as vscode from "vscode";
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions } from "./client-options.js";

/** A client of the server in a worker. */
export function startWorkerClient(extensionUri: vscode.Uri): LanguageClient {
  const script = vscode.Uri.joinPath(extensionUri, "dist", "server.js").toString(true);
  const options = clientOptions({ folder: new URL(".", script).href });
  let worker: Worker | null = null;
  const server = (): Promise<MessageTransports> => {
    worker?.terminate();
    worker = new Worker(script);
    // The client would do this itself for a Worker; but the editor gives workers of a class of its own.
    const reader = new BrowserMessageReader(worker);
    const writer = new BrowserMessageWriter(worker);
    return Promise.resolve({ reader, writer });
  };
  return new LanguageClient(CLIENT_ID, CLIENT_NAME, server, options);
}
