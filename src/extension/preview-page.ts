import { randomText } from "./random-text.js";
import * as vscode from "vscode";

/** The folders that a preview may load from. */
export function previewRoots(extensionUri: vscode.Uri): vscode.Uri[] {
  return ["dist", "media"].map((folder) => vscode.Uri.joinPath(extensionUri, folder));
}

/**
 * The preview's page. It is set once: its script builds the rest from messages. Nothing may be loaded
 * but its own script and styles; pictures in data URLs are what the export draws.
 */
export function previewPage(webview: vscode.Webview, extensionUri: vscode.Uri): string {
  const nonce = randomText();
  const at = (...parts: string[]): string =>
    webview.asWebviewUri(vscode.Uri.joinPath(extensionUri, ...parts)).toString();
  const policy = [
    "default-src 'none'",
    `script-src 'nonce-${nonce}'`,
    `style-src ${webview.cspSource}`,
    "img-src data:",
  ].join("; ");
  return `<!doctype html>
<html lang="en" data-gaugelath="preview">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <link rel="stylesheet" href="${at("media", "preview.css")}">
    <title>Plan preview</title>
  </head>
  <body>
    <script nonce="${nonce}" src="${at("dist", "preview.js")}"></script>
  </body>
</html>
`;
}
