import * as vscode from "vscode";
import { LANGUAGE } from "./client-options.js";
import type { Comparisons } from "./comparisons.js";
import type { GitHistory } from "./git-history.js";
import { LAST } from "./git-history.js";
import { isMissing } from "./open-git.js";
import { pickPlan } from "./pick-plan.js";
import { pickRevision } from "./pick-revision.js";
import type { Previews } from "./previews.js";

/** What commands of a comparison work with. */
export interface ComparingEnds {
  readonly comparisons: Comparisons;
  readonly previews: Previews;
  readonly history: GitHistory;
}

/** Compares a plan with the last commit; says why where that can't be. */
export async function compareLastCommit(ends: ComparingEnds, subject: unknown): Promise<void> {
  const uri = planOf(ends, subject);
  if (!uri) return;
  const found = await ends.history.at(uri, LAST);
  if (isMissing(found)) tell(found.why);
  else ends.comparisons.open(uri, { kind: "last commit" });
}

/** Compares a plan with a revision that is picked. */
export async function compareRevision(ends: ComparingEnds, subject: unknown): Promise<void> {
  const uri = planOf(ends, subject);
  if (!uri) return;
  const repository = await ends.history.repositoryOf(uri);
  if (isMissing(repository)) {
    tell(repository.why);
    return;
  }
  const revision = await pickRevision(uri, repository.repository);
  if (revision === null) return;
  const found = await ends.history.at(uri, revision);
  if (isMissing(found)) tell(found.why);
  else ends.comparisons.open(uri, { kind: "revision", revision });
}

/** Compares a plan with another that is picked: the other one is taken for what was before. */
export async function comparePlan(ends: ComparingEnds, subject: unknown): Promise<void> {
  const uri = planOf(ends, subject);
  const other = uri && (await pickPlan(uri));
  if (uri && other) ends.comparisons.open(uri, { kind: "plan", uri: other.toString() });
}

/** What a lens over a wall does. */
export function showChanges({ comparisons }: ComparingEnds, uri: string, wall: string): void {
  comparisons.open(vscode.Uri.parse(uri), { kind: "last commit" }, wall);
}

/**
 * The plan that a command speaks of: a file of the explorer, an entry of the source control view, else
 * what has the focus. Says what helps where it is none.
 */
function planOf({ comparisons, previews }: ComparingEnds, subject: unknown): vscode.Uri | null {
  const uri = uriIn(subject) ?? focusedPlan() ?? previews.activePlan ?? comparisons.activePlan;
  if (uri && (uri.path.endsWith(".tileplan") || isOpenPlan(uri))) return asWritten(uri);
  tell(
    uri
      ? `${uri.path.slice(uri.path.lastIndexOf("/") + 1)} is no plan: plans end in .tileplan.`
      : "Open a plan first: a file ending in .tileplan.",
  );
  return null;
}

function uriIn(subject: unknown): vscode.Uri | null {
  if (subject instanceof vscode.Uri) return subject;
  const isEntry = typeof subject === "object" && subject !== null && "resourceUri" in subject;
  return isEntry && subject.resourceUri instanceof vscode.Uri ? subject.resourceUri : null;
}

function focusedPlan(): vscode.Uri | null {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === LANGUAGE ? document.uri : null;
}

function isOpenPlan(uri: vscode.Uri): boolean {
  return vscode.workspace.textDocuments.some(
    (document) => document.languageId === LANGUAGE && document.uri.toString() === uri.toString(),
  );
}

/** A state of a file that the editor shows out of Git stands for the file itself. */
function asWritten(uri: vscode.Uri): vscode.Uri {
  return uri.scheme === "git" ? vscode.Uri.file(uri.fsPath) : uri;
}

function tell(words: string): void {
  void vscode.window.showWarningMessage(words);
}
