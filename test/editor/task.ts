import * as vscode from "vscode";

/** What the script that opened this window wants of the tests in it. */
export interface Task {
  /** Where the hands listen. */
  readonly hands: string;
  /** The folder of suites to run. */
  readonly suites: string;
  /** 2 when the window was loaded anew. */
  readonly phase: 1 | 2;
  /** Words of the titles of the tests to run; all when left out. */
  readonly grep?: string | null;
}

/** The workspace's folder. */
export function workspaceFolder(): vscode.Uri {
  return vscode.workspace.workspaceFolders![0]!.uri;
}

export async function readTask(): Promise<Task> {
  const file = vscode.Uri.joinPath(workspaceFolder(), ".gaugelath-test.json");
  const bytes = await vscode.workspace.fs.readFile(file);
  return JSON.parse(new TextDecoder().decode(bytes)) as Task;
}
