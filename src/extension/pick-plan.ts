import * as vscode from "vscode";
import { planName } from "./plan-name.js";

/** So many plans of the workspace are offered; any other is found in the dialog. */
const MOST = 200;

interface PlanItem extends vscode.QuickPickItem {
  /** null asks for a file outside of the workspace. */
  readonly uri: vscode.Uri | null;
}

/** Asks for another plan; null when it was called off. */
export async function pickPlan(than: vscode.Uri): Promise<vscode.Uri | null> {
  const plans = (await vscode.workspace.findFiles("**/*.tileplan", undefined, MOST))
    .filter((uri) => uri.toString() !== than.toString())
    .sort((a, b) => a.path.localeCompare(b.path));
  const items: PlanItem[] = [
    ...plans.map((uri) => ({
      uri,
      label: planName(uri),
      description: vscode.workspace.asRelativePath(vscode.Uri.joinPath(uri, "..")),
    })),
    { uri: null, label: "Another file...", alwaysShow: true },
  ];
  const chosen = await vscode.window.showQuickPick(items, {
    title: `Compare ${planName(than)}`,
    placeHolder: "The plan that counts as before",
    matchOnDescription: true,
  });
  if (!chosen) return null;
  return chosen.uri ?? (await pickFile(than));
}

async function pickFile(than: vscode.Uri): Promise<vscode.Uri | null> {
  const chosen = await vscode.window.showOpenDialog({
    title: "The plan that counts as before",
    openLabel: "Compare",
    filters: { "Tile plans": ["tileplan"] },
    ...(than.scheme === "untitled" ? {} : { defaultUri: vscode.Uri.joinPath(than, "..") }),
  });
  return chosen?.[0] ?? null;
}
