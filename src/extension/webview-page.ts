import { randomText } from "./random-text.js";
import * as vscode from "vscode";

/** The folders that a page may load from. */
export function pageRoots(extensionUri: vscode.Uri): vscode.Uri[] {
  return ["dist", "media"].map((folder) => vscode.Uri.joinPath(extensionUri, folder));
}

/** The sign of a plan, on a page's tab. */
export function planIcon(extensionUri: vscode.Uri): { light: vscode.Uri; dark: vscode.Uri } {
  const icon = (theme: string): vscode.Uri =>
    vscode.Uri.joinPath(extensionUri, "media", `file-${theme}.svg`);
  return { light: icon("light"), dark: icon("dark") };
}

/** What a page shows, with its title. */
const TITLES = {
  preview: "Plan preview",
  comparison: "What changed",
  sheet: "Setter's sheet",
} as const;

/**
 * The page of a preview, a comparison or a sheet. It is set once: its script builds the rest from messages.
 * Nothing may be loaded but its own script and styles; pictures in data URLs are what the export draws.
 */
export function webviewPage(
  webview: vscode.Webview,
  extensionUri: vscode.Uri,
  shows: keyof typeof TITLES,
): string {
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
<html lang="en" data-gaugelath="${shows}">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <link rel="stylesheet" href="${at("media", "preview.css")}">
    <title>${TITLES[shows]}</title>
  </head>
  <body>
    <script nonce="${nonce}" src="${at("dist", "preview.js")}"></script>
  </body>
</html>
`;
}
