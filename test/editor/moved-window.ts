import * as vscode from "vscode";
import { comparisonOf, type ShownComparison } from "./comparison.js";
import { openPlan, replace } from "./plans.js";

/** The window plan with its window moved, compared with the last commit. */
export async function movedWindow(): Promise<{
  readonly editor: vscode.TextEditor;
  readonly comparison: ShownComparison;
}> {
  const editor = await openPlan("window.tileplan");
  await replace(editor, "at 18, sill", "at 20, sill");
  await vscode.commands.executeCommand("gaugelath.compareLastCommit");
  const comparison = await comparisonOf("window.tileplan");
  await comparison.untilSaid(/window sash moves right 2 in/);
  return { editor, comparison };
}
