import { execFileSync } from "node:child_process";
import * as vscode from "vscode";
import { closeAll, planUri } from "./plans.js";
import { workspaceFolder } from "./task.js";

/** Runs git in a folder of the workspace; what it says. */
export function git(args: readonly string[], folder = workspaceFolder().fsPath): string {
  return execFileSync("git", args, { cwd: folder, encoding: "utf8" }).trim();
}

/** Commits all that is written; the commit's name. */
export function commitAll(message: string): string {
  git(["add", "-A"]);
  git(["commit", "-qm", message]);
  return git(["rev-parse", "HEAD"]);
}

interface GitExtension {
  getAPI(version: 1): {
    readonly repositories: readonly {
      readonly rootUri: vscode.Uri;
      status(): Promise<void>;
    }[];
  };
}

/** Has the editor's Git look at the workspace now; its own command asks which repository, of several. */
export async function refreshGit(): Promise<void> {
  const api = vscode.extensions.getExtension<GitExtension>("vscode.git")!.exports.getAPI(1);
  const root = workspaceFolder().fsPath;
  await api.repositories.find(({ rootUri }) => rootUri.fsPath === root)?.status();
}

/** Leaves no editor open, and the workspace as it was first committed. */
export async function beginAnew(): Promise<void> {
  await closeAll();
  await vscode.commands.executeCommand("notifications.clearAll");
  git(["checkout", "-q", "-f", "main"]);
  git(["reset", "-q", "--hard", git(["rev-list", "--max-parents=0", "HEAD"])]);
  git(["clean", "-qffd"]);
  await refreshGit();
}

export async function readPlan(name: string): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(planUri(name)));
}
