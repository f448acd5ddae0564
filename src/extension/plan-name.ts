import type * as vscode from "vscode";

/** What a plan is called for people: its file's name. */
export function planName(uri: vscode.Uri): string {
  return uri.path.slice(uri.path.lastIndexOf("/") + 1);
}
