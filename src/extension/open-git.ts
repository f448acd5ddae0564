import * as vscode from "vscode";
import type { GitApi, GitExtension } from "./git-api.js";
import { type Missing, missing } from "./old-version.js";

const GIT_EXTENSION = "vscode.git";
/** How long Git may take to look for repositories after the window opened, in milliseconds. */
const PATIENCE = 10_000;

const OTHERWISE = "Comparing with another plan works without Git.";

export function gitExtension(): vscode.Extension<GitExtension> | undefined {
  return vscode.extensions.getExtension<GitExtension>(GIT_EXTENSION);
}

/** The editor's Git, once it has looked for repositories; else why there is none. */
export async function openGit(): Promise<GitApi | Missing> {
  const extension = gitExtension();
  if (!extension) {
    return missing(
      "The editor's Git extension doesn't run here (it does not in a browser or in a restricted " +
        `workspace), so there is no commit to compare with. ${OTHERWISE}`,
    );
  }
  const git = extension.isActive ? extension.exports : await extension.activate();
  if (!git.enabled) {
    return missing(
      `Git is off in the editor's settings (git.enabled), so there is no commit to compare with. ${OTHERWISE}`,
    );
  }
  try {
    const api = git.getAPI(1);
    await looked(api);
    return api;
  } catch {
    return missing(
      `The editor found no git program, so there is no commit to compare with. ${OTHERWISE}`,
    );
  }
}

export function isMissing(found: object): found is Missing {
  return "kind" in found && found.kind === "missing";
}

async function looked(api: GitApi): Promise<void> {
  if (api.state === "initialized") return;
  await new Promise<void>((resolve) => {
    const end = setTimeout(() => done(), PATIENCE);
    const listening = api.onDidChangeState((state) => {
      if (state === "initialized") done();
    });
    const done = (): void => {
      clearTimeout(end);
      listening.dispose();
      resolve();
    };
  });
}
