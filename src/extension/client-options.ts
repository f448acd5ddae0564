import * as vscode from "vscode";
import type { LanguageClientOptions } from "vscode-languageclient";

export const LANGUAGE = "tileplan";
export const CLIENT_ID = "gaugelath";
export const CLIENT_NAME = "Gaugelath";

/** Plans of every kind of file system, saved or not; and their files, for those that aren't open. */
export function clientOptions(): LanguageClientOptions {
  return {
    documentSelector: [{ language: LANGUAGE }],
    synchronize: {
      fileEvents: vscode.workspace.createFileSystemWatcher("**/*.tileplan"),
    },
  };
}
