import * as vscode from "vscode";
import { workspaceFolder } from "./task.js";

/** A file of the workspace. */
export function planUri(name: string): vscode.Uri {
  return vscode.Uri.joinPath(workspaceFolder(), name);
}

/** Opens a plan of the workspace in the first column. */
export async function openPlan(name: string): Promise<vscode.TextEditor> {
  const document = await vscode.workspace.openTextDocument(planUri(name));
  return vscode.window.showTextDocument(document, vscode.ViewColumn.One);
}
