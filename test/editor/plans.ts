import * as vscode from "vscode";
import { hands } from "./hands.js";
import { workspaceFolder } from "./task.js";
import { until } from "./until.js";

/** A file of the workspace. */
export function planUri(name: string): vscode.Uri {
  return vscode.Uri.joinPath(workspaceFolder(), name);
}

/** Opens a plan of the workspace in the first column. */
export async function openPlan(name: string): Promise<vscode.TextEditor> {
  const document = await vscode.workspace.openTextDocument(planUri(name));
  const editor = await vscode.window.showTextDocument(document, {
    viewColumn: vscode.ViewColumn.One,
    preview: false,
  });
  await hands.untilInText();
  return editor;
}

/** Opens a plan that is not saved anywhere. */
export async function openText(content: string): Promise<vscode.TextEditor> {
  const document = await vscode.workspace.openTextDocument({ language: "tileplan", content });
  const editor = await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  await hands.untilInText();
  return editor;
}

/**
 * Puts a text in place of the first occurrence of another, once it is there: a file that was just
 * changed on disk is read again in the editor's own time.
 */
export async function replace(
  editor: vscode.TextEditor,
  found: string,
  wanted: string,
): Promise<void> {
  await until(found, () => editor.document.getText().includes(found));
  const range = rangeOf(editor.document, found);
  await editor.edit((edit) => edit.replace(range, wanted));
}

/** Where a text stands for the first time. */
export function rangeOf(document: vscode.TextDocument, text: string): vscode.Range {
  const start = document.getText().indexOf(text);
  if (start < 0) throw new Error(`${JSON.stringify(text)} is not in ${document.uri.path}`);
  return new vscode.Range(document.positionAt(start), document.positionAt(start + text.length));
}

/** Writes a plan into the workspace. */
export async function writePlan(name: string, text: string): Promise<vscode.Uri> {
  const uri = planUri(name);
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  return uri;
}

/** Leaves no editor open, whatever was changed in it. */
export async function closeAll(): Promise<void> {
  const changed = vscode.workspace.textDocuments.filter(
    ({ isDirty, languageId }) => isDirty && languageId === "tileplan",
  );
  for (const document of changed) {
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  }
  await vscode.commands.executeCommand("workbench.action.closeAllEditors");
}
