import * as vscode from "vscode";
import type { ExportFormat } from "../preview/messages.js";

const FILTERS: Readonly<Record<ExportFormat, Record<string, string[]>>> = {
  svg: { "SVG picture": ["svg"] },
  png: { "PNG picture": ["png"] },
};

/** Asks where a picture of a plan goes, and writes it there; returns where, or null when it was called off. */
export async function savePicture(
  plan: vscode.Uri,
  format: ExportFormat,
  data: string,
): Promise<vscode.Uri | null> {
  const file = await vscode.window.showSaveDialog({
    defaultUri: pictureBeside(plan, format),
    filters: FILTERS[format],
    title: "Export Picture",
  });
  if (!file) return null;
  await vscode.workspace.fs.writeFile(file, bytesOf(format, data));
  return file;
}

/** `back.tileplan` -> `back.svg`, in the same folder; an unsaved plan goes to the workspace's folder. */
export function pictureBeside(plan: vscode.Uri, format: ExportFormat): vscode.Uri {
  const name = plan.path.slice(plan.path.lastIndexOf("/") + 1).replace(/\.tileplan$/, "");
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  if (plan.scheme === "untitled" && folder) return vscode.Uri.joinPath(folder, `${name}.${format}`);
  return vscode.Uri.joinPath(plan, "..", `${name}.${format}`);
}

function bytesOf(format: ExportFormat, data: string): Uint8Array {
  if (format === "svg") return new TextEncoder().encode(data);
  return Uint8Array.from(atob(data), (character) => character.charCodeAt(0));
}
