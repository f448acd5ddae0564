import * as vscode from "vscode";
import { type BaseLanguageClient, State } from "vscode-languageclient";
import { answerFiles } from "./answer-files.js";
import { LANGUAGE } from "./client-options.js";
import * as commands from "./compare-commands.js";
import { ComparisonPanel } from "./comparison-panel.js";
import { Comparisons } from "./comparisons.js";
import { GitHistory } from "./git-history.js";
import { LastCommits } from "./last-commits.js";
import { openExample } from "./open-example.js";
import { PlanServer } from "./plan-server.js";
import { PreviewPanel } from "./preview-panel.js";
import { Previews } from "./previews.js";
import type { ReadBlob } from "./read-blob.js";
import { SheetPanel } from "./sheet-panel.js";
import { Sheets } from "./sheets.js";

/** How the kinds of extension host differ. */
export interface HostParts {
  readonly createClient: (extensionUri: vscode.Uri) => BaseLanguageClient;
  /** null where no program can be started. */
  readonly readBlob: ReadBlob | null;
}

/** What both kinds of extension host share. */
export function activateWith(
  context: vscode.ExtensionContext,
  { createClient, readBlob }: HostParts,
): void {
  const { extensionUri } = context;
  const client = createClient(extensionUri);
  const server = new PlanServer(client);
  const history = new GitHistory(readBlob);
  const lastCommits = new LastCommits(history, server);
  const comparisons = new Comparisons({ extensionUri, server, history, lastCommits });
  const previews = new Previews({ extensionUri, server, lastCommits }, (uri) => {
    void commands.compareLastCommit(ends, uri);
  });
  const sheets = new Sheets(extensionUri, server);
  const ends = { comparisons, previews, history };
  const on = (command: string, run: (...words: never[]) => unknown): vscode.Disposable =>
    vscode.commands.registerCommand(`gaugelath.${command}`, run);
  context.subscriptions.push(
    client,
    answerFiles(client, history),
    server,
    lastCommits,
    comparisons,
    previews,
    sheets,
    vscode.window.registerWebviewPanelSerializer(PreviewPanel.type, previews),
    vscode.window.registerWebviewPanelSerializer(ComparisonPanel.type, comparisons),
    vscode.window.registerWebviewPanelSerializer(SheetPanel.type, sheets),
    on("openSheet", (uri?: vscode.Uri) => void sheets.open(uri)),
    on("saveSheet", (uri?: vscode.Uri) => sheets.save(uri)),
    on("openPreview", (uri?: vscode.Uri) => previews.open(uri, "same")),
    on("openPreviewToSide", (uri?: vscode.Uri) => previews.open(uri, "side")),
    on("exportPicture", () => previews.export()),
    on("openExample", () => openExample(extensionUri)),
    on("restartServer", () => server.restart()),
    on("compareLastCommit", (subject?: unknown) => commands.compareLastCommit(ends, subject)),
    on("compareRevision", (subject?: unknown) => commands.compareRevision(ends, subject)),
    on("comparePlan", (subject?: unknown) => commands.comparePlan(ends, subject)),
    on("showChanges", (uri: string, wall: string) => commands.showChanges(ends, uri, wall)),
    startWithFirstPlan(client),
  );
  // The source control view tells menus nothing of an entry's language: workspaces without plans have no entry.
  void vscode.commands.executeCommand("setContext", "gaugelath.ready", true);
}

/** Starts the server once a plan is open: a workspace that only has plans needs none. */
function startWithFirstPlan(client: BaseLanguageClient): vscode.Disposable {
  const startFor = ({ languageId }: vscode.TextDocument): void => {
    if (languageId !== LANGUAGE || client.state !== State.Stopped) return;
    client.start().catch((error: unknown) => {
      client.error("The language server could not be started", error, "force");
    });
  };
  vscode.workspace.textDocuments.forEach(startFor);
  return vscode.workspace.onDidOpenTextDocument(startFor);
}
