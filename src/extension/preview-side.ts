import * as vscode from "vscode";

/** Where a preview opens: in the text's own column, or at the side that the settings say. */
export type PreviewPlace = "same" | "side";

/** The column for a new preview; makes a group below the text when that is what the settings say. */
export async function previewColumn(place: PreviewPlace): Promise<vscode.ViewColumn> {
  if (place === "same") return vscode.ViewColumn.Active;
  const side = vscode.workspace.getConfiguration("gaugelath").get("preview.side");
  if (side !== "below") return vscode.ViewColumn.Beside;
  await vscode.commands.executeCommand("workbench.action.newGroupBelow");
  return vscode.ViewColumn.Active;
}
