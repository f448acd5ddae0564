import * as vscode from "vscode";
import type { SourceRange } from "../model/index.js";
import { LANGUAGE } from "./client-options.js";

/**
 * Shows a place of a plan's text: where the text is open already, else beside the preview that asks,
 * in the first column that is not its own.
 */
export async function revealPlace(
  uri: vscode.Uri,
  range: SourceRange,
  previewColumn: vscode.ViewColumn | undefined,
): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  if (document.languageId !== LANGUAGE) return;
  const { start, end } = range;
  await vscode.window.showTextDocument(document, {
    selection: new vscode.Range(start.line, start.character, end.line, end.character),
    viewColumn: columnOf(uri) ?? columnBeside(previewColumn),
  });
}

function columnOf(uri: vscode.Uri): vscode.ViewColumn | undefined {
  const open = vscode.window.tabGroups.all.find(({ tabs }) =>
    tabs.some(
      ({ input }) =>
        input instanceof vscode.TabInputText && input.uri.toString() === uri.toString(),
    ),
  );
  return open?.viewColumn;
}

function columnBeside(previewColumn: vscode.ViewColumn | undefined): vscode.ViewColumn {
  const columns = vscode.window.tabGroups.all.map(({ viewColumn }) => viewColumn);
  return columns.find((column) => column !== previewColumn) ?? vscode.ViewColumn.Beside;
}
