import * as vscode from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import {
  FIND_PLANS,
  type FindPlans,
  READ_FILE,
  READ_OLD,
  type ReadFile,
  type ReadOld,
} from "../server/protocol.js";
import type { GitHistory } from "./git-history.js";

/**
 * Reads files for the server that it can't reach itself: other file systems, all in a browser, and
 * files as they were in a commit.
 */
export function answerFiles(client: BaseLanguageClient, history: GitHistory): vscode.Disposable {
  return vscode.Disposable.from(
    client.onRequest(READ_FILE, ({ uri }: ReadFile) => readText(vscode.Uri.parse(uri))),
    client.onRequest(READ_OLD, ({ uri, revision }: ReadOld) =>
      history.read(vscode.Uri.parse(uri), revision),
    ),
    client.onRequest(FIND_PLANS, ({ folders, most }: FindPlans) => findPlans(folders, most)),
  );
}

async function readText(uri: vscode.Uri): Promise<string | null> {
  try {
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
  } catch {
    return null;
  }
}

async function findPlans(folders: readonly string[], most: number): Promise<readonly string[]> {
  const found: string[] = [];
  for (const folder of folders) {
    const plans = new vscode.RelativePattern(vscode.Uri.parse(folder), "**/*.tileplan");
    const files = await vscode.workspace.findFiles(plans, undefined, most - found.length);
    found.push(...files.map((file) => file.toString()));
    if (found.length >= most) break;
  }
  return found;
}
