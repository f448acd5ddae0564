import * as vscode from "vscode";
import type { PrintedFile, PrintFormat } from "../server/protocol.js";

interface FormatItem extends vscode.QuickPickItem {
  readonly format: PrintFormat;
  readonly filter: string;
}

const FORMATS: readonly FormatItem[] = [
  { format: "pdf", label: "PDF", description: "to print, story poles in true size", filter: "PDF" },
  { format: "md", label: "Markdown", description: "words and tables", filter: "Markdown" },
  {
    format: "csv",
    label: "CSV",
    description: "cuts and purchases, for a spreadsheet",
    filter: "CSV",
  },
  {
    format: "dxf",
    label: "DXF",
    description: "a drawing of each wall, in true size",
    filter: "DXF drawing",
  },
  { format: "svg", label: "SVG", description: "a picture of each sheet", filter: "SVG picture" },
  { format: "json", label: "JSON", description: "all of it, as data", filter: "JSON" },
];

/** Has a sheet printed in a format; null where the plan is gone. */
export type PrintSheet = (format: PrintFormat) => Promise<readonly PrintedFile[] | null>;

/**
 * Asks for a format and a file, and writes the sheet there; returns the files, none when it was called
 * off. Several files have their part's name behind the one that was chosen.
 */
export async function saveSheet(plan: vscode.Uri, print: PrintSheet): Promise<vscode.Uri[]> {
  const chosen = await vscode.window.showQuickPick(FORMATS, {
    title: "Save the Setter's Sheet",
    placeHolder: "The sheet, as",
  });
  if (!chosen) return [];
  const file = await vscode.window.showSaveDialog({
    defaultUri: sheetBeside(plan, chosen.format),
    filters: { [chosen.filter]: [chosen.format] },
    title: "Save the Setter's Sheet",
  });
  if (!file) return [];
  const printed = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Notification, title: "Printing the setter's sheet" },
    () => print(chosen.format),
  );
  if (!printed) throw new Error("The plan is not open any more");
  const files = printed.map(({ part }) => (printed.length > 1 ? withPart(file, part) : file));
  for (const [i, { data }] of printed.entries()) {
    const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
    await vscode.workspace.fs.writeFile(files[i]!, bytes);
  }
  return files;
}

/** `back.tileplan` -> `back.pdf`, in the same folder; an unsaved plan goes to the workspace's folder. */
export function sheetBeside(plan: vscode.Uri, format: PrintFormat): vscode.Uri {
  const name = plan.path.slice(plan.path.lastIndexOf("/") + 1).replace(/\.tileplan$/, "");
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  if (plan.scheme === "untitled" && folder) return vscode.Uri.joinPath(folder, `${name}.${format}`);
  return vscode.Uri.joinPath(plan, "..", `${name}.${format}`);
}

function withPart(file: vscode.Uri, part: string): vscode.Uri {
  return file.with({ path: file.path.replace(/(\.\w+)?$/, (ending) => `-${part}${ending}`) });
}
