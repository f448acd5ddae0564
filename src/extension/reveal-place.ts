import * as vscode from "vscode";
import type { SourceRange } from "../model/index.js";
import { LANGUAGE } from "./client-options.js";

/** Shows a place of a plan's text: where the text is open already, else beside the preview. */
export async function revealPlace(uri: vscode.Uri, range: SourceRange): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  if (document.languageId !== LANGUAGE) return;
  const { start, end } = range;
  await vscode.window.showTextDocument(document, {
    selection: new vscode.Range(start.line, start.character, end.line, end.character),
    viewColumn: columnOf(uri) ?? vscode.ViewColumn.One,
  });
}

function columnOf(uri: vscode.Uri): vscode.ViewColumn | undefined {
  for (const { viewColumn, tabs } of vscode.window.tabGroups.all) {
    const here = tabs.some(
      ({ input }) =>
        input instanceof vscode.TabInputText && input.uri.toString() === uri.toString(),
    );
    if (here) return viewColumn;
  }
  return undefined;
}
