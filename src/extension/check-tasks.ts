import * as vscode from "vscode";

interface CheckDefinition extends vscode.TaskDefinition {
  /** The plan, or a folder of plans. */
  readonly file?: unknown;
  readonly strict?: unknown;
}

const MATCHERS = ["$gaugelath", "$gaugelath-note"];

/** Tasks that run `gaugelath check`, which stands in one file with the server. */
export class CheckTasks implements vscode.TaskProvider {
  static readonly type = "gaugelath";

  constructor(private readonly extensionUri: vscode.Uri) {}

  provideTasks(): vscode.Task[] {
    const folders = vscode.workspace.workspaceFolders ?? [];
    return folders.map((folder) =>
      this.#task({ type: CheckTasks.type }, folder, `check all plans of ${folder.name}`),
    );
  }

  /** A task of the user's own, out of tasks.json. */
  resolveTask(task: vscode.Task): vscode.Task {
    const definition = task.definition as CheckDefinition;
    const scope = typeof task.scope === "object" ? task.scope : undefined;
    return this.#task(definition, scope ?? vscode.workspace.workspaceFolders?.[0], task.name);
  }

  #task(
    definition: CheckDefinition,
    folder: vscode.WorkspaceFolder | undefined,
    name: string,
  ): vscode.Task {
    const program = vscode.Uri.joinPath(this.extensionUri, "dist", "server.js").fsPath;
    const file = typeof definition.file === "string" ? definition.file : ".";
    const strict = definition.strict === true ? ["--strict"] : [];
    const options: vscode.ProcessExecutionOptions = {
      // The editor's own program is a Node when it is told so.
      env: { ELECTRON_RUN_AS_NODE: "1" },
      ...(folder && { cwd: folder.uri.fsPath }),
    };
    const run = new vscode.ProcessExecution(
      process.execPath,
      [program, "check", ...strict, file],
      options,
    );
    const scope = folder ?? vscode.TaskScope.Workspace;
    const task = new vscode.Task(definition, scope, name, "gaugelath", run, MATCHERS);
    task.group = vscode.TaskGroup.Build;
    return task;
  }
}
