import * as vscode from "vscode";
import type { GitApi, GitExtension, GitRepository } from "./git-api.js";
import { gitExtension } from "./open-git.js";

/** Tells whenever a repository came, went or changed its state, as long as it isn't disposed. */
export function watchGit(changed: () => void): vscode.Disposable {
  const subscriptions: vscode.Disposable[] = [];
  const repositories = new Map<GitRepository, vscode.Disposable>();
  let disposed = false;

  const add = (repository: GitRepository): void => {
    repositories.set(repository, repository.state.onDidChange(changed));
    changed();
  };
  const remove = (repository: GitRepository): void => {
    repositories.get(repository)?.dispose();
    repositories.delete(repository);
    changed();
  };
  const listen = (api: GitApi): void => {
    subscriptions.push(api.onDidOpenRepository(add), api.onDidCloseRepository(remove));
    api.repositories.forEach(add);
  };
  const begin = (git: GitExtension): void => {
    if (disposed) return;
    if (git.enabled) listenWhereFound(git, listen);
    subscriptions.push(
      git.onDidChangeEnablement((enabled) => {
        if (enabled) listenWhereFound(git, listen);
        changed();
      }),
    );
  };
  // Without it there is nothing to hear of.
  gitExtension()
    ?.activate()
    .then(begin, () => undefined);
  return new vscode.Disposable(() => {
    disposed = true;
    for (const each of [...subscriptions, ...repositories.values()]) each.dispose();
  });
}

/** It throws where no git program was found. */
function listenWhereFound(git: GitExtension, listen: (api: GitApi) => void): void {
  try {
    listen(git.getAPI(1));
  } catch {
    // Whoever asks for a commit is told why there is none.
  }
}
