import * as vscode from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { FIND_PLANS, type FindPlans, READ_FILE, type ReadFile } from "../server/protocol.js";

/** Reads files for the server that it can't reach itself: other file systems, and all in a browser. */
export function answerFiles(client: BaseLanguageClient): vscode.Disposable {
  return vscode.Disposable.from(
    client.onRequest(READ_FILE, ({ uri }: ReadFile) => readText(vscode.Uri.parse(uri))),
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
