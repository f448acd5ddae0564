import * as vscode from "vscode";
import { LANGUAGE } from "./client-options.js";

/** Opens the walkthrough's example as a new plan that is not saved anywhere yet. */
export async function openExample(extensionUri: vscode.Uri): Promise<void> {
  const file = vscode.Uri.joinPath(extensionUri, "media", "walkthrough", "first-wall.tileplan");
  const content = new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
  const document = await vscode.workspace.openTextDocument({ language: LANGUAGE, content });
  await vscode.window.showTextDocument(document, vscode.ViewColumn.Active);
}
