import * as vscode from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { answerFiles } from "./answer-files.js";
import { openExample } from "./open-example.js";
import { PlanServer } from "./plan-server.js";
import { PreviewPanel } from "./preview-panel.js";
import { Previews } from "./previews.js";

/** What both kinds of extension host share; they differ in how the server is started. */
export function activateWith(
  context: vscode.ExtensionContext,
  createClient: (extensionUri: vscode.Uri) => BaseLanguageClient,
): void {
  const client = createClient(context.extensionUri);
  const server = new PlanServer(client);
  const previews = new Previews(context.extensionUri, server);
  const on = (command: string, run: (...words: never[]) => unknown): vscode.Disposable =>
    vscode.commands.registerCommand(`gaugelath.${command}`, run);
  context.subscriptions.push(
    client,
    answerFiles(client),
    server,
    previews,
    vscode.window.registerWebviewPanelSerializer(PreviewPanel.type, previews),
    on("openPreview", (uri?: vscode.Uri) => previews.open(uri, "same")),
    on("openPreviewToSide", (uri?: vscode.Uri) => previews.open(uri, "side")),
    on("exportPicture", () => previews.export()),
    on("openExample", () => openExample(context.extensionUri)),
    on("restartServer", () => server.restart()),
  );
  client.start().catch((error: unknown) => {
    client.error("The language server could not be started", error, "force");
  });
}
