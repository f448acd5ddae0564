import * as vscode from "vscode";
import type { GitApi, GitChange, GitCommit, GitRepository } from "./git-api.js";
import { type Missing, missing, type OldVersion } from "./old-version.js";
import { isMissing, openGit } from "./open-git.js";
import { planName } from "./plan-name.js";
import type { ReadBlob } from "./read-blob.js";

/** The commit that is checked out. */
export const LAST = "HEAD";

/** A plan's repository, as far as the editor knows it. */
export interface Repository {
  readonly git: GitApi;
  readonly repository: GitRepository;
}

/** Plans as they were in commits, by way of the editor's Git extension. */
export class GitHistory {
  /** `readBlob` is null where no program can be started. */
  constructor(private readonly readBlob: ReadBlob | null) {}

  /** The repository that a plan is in, else why there is none. */
  async repositoryOf(uri: vscode.Uri): Promise<Repository | Missing> {
    const name = planName(uri);
    if (uri.scheme === "untitled") {
      return missing(`${name} was never saved, so no commit has it.`);
    }
    const git = await openGit();
    if (isMissing(git)) return git;
    const repository = uri.scheme === "file" ? git.getRepository(uri) : null;
    if (repository) return { git, repository };
    return missing(
      `${name} is in no Git repository that the editor has open, so there is no commit to compare with.`,
    );
  }

  /** A plan as it was in a revision. */
  async at(uri: vscode.Uri, revision: string): Promise<OldVersion | Missing> {
    const found = await this.repositoryOf(uri);
    if (isMissing(found)) return found;
    const { repository } = found;
    // What begins with a dash is an option to git, never a revision.
    const isName = !revision.startsWith("-");
    const commit = isName ? await repository.getCommit(revision).catch(() => null) : null;
    if (!commit) return missing(await noCommitWords(repository, revision));
    const words = commitWords(revision, commit);
    for (const file of [uri, await nameBefore(repository, uri, revision)]) {
      const text = file && (await this.#read(found, file, commit.hash));
      if (!file || text === null) continue;
      const old = { uri: file.toString(), text, revision: commit.hash };
      return { kind: "found", words, old };
    }
    return missing(`${planName(uri)} is not in ${words}: all of it is new.`);
  }

  /** A file's text in a commit, for what a plan uses; null where it has none. */
  async read(uri: vscode.Uri, commit: string): Promise<string | null> {
    const found = await this.repositoryOf(uri);
    return isMissing(found) ? null : this.#read(found, uri, commit);
  }

  #read({ git, repository }: Repository, uri: vscode.Uri, commit: string): Promise<string | null> {
    if (!this.readBlob) return Promise.resolve(null);
    const root = repository.rootUri.fsPath;
    return this.readBlob({ git: git.git.path, root, commit, file: uri.fsPath });
  }
}

/** What a plan was called in a revision, where git knows that it was renamed since. */
async function nameBefore(
  repository: GitRepository,
  uri: vscode.Uri,
  revision: string,
): Promise<vscode.Uri | null> {
  const changes =
    revision === LAST
      ? repository.state.indexChanges
      : await repository.diffWith(revision).catch((): GitChange[] => []);
  const renamed = changes.find(
    ({ renameUri, originalUri }) =>
      renameUri?.toString() === uri.toString() && originalUri.toString() !== uri.toString(),
  );
  return renamed?.originalUri ?? null;
}

/** `the last commit, 1a2b3c4 "Move the niche"`. */
export function commitWords(revision: string, commit: GitCommit): string {
  const short = shortHash(commit.hash);
  const subject = `"${subjectOf(commit)}"`;
  if (revision === LAST) return `the last commit, ${short} ${subject}`;
  return commit.hash.startsWith(revision)
    ? `commit ${short} ${subject}`
    : `${revision}, commit ${short} ${subject}`;
}

export function shortHash(hash: string): string {
  return hash.slice(0, 7);
}

export function subjectOf({ message }: GitCommit): string {
  return message.split("\n", 1)[0]!.trim();
}

async function noCommitWords(repository: GitRepository, revision: string): Promise<string> {
  if (revision === LAST)
    return "The repository has no commit yet, so there is nothing to compare with.";
  const words = `The repository has no revision "${revision}".`;
  return (await isShallow(repository)) ? `${words} ${SHALLOW}` : words;
}

export const SHALLOW =
  "Its history is shallow: it was cloned without the older commits, which git fetch --unshallow brings.";

/** Whether older commits were left out when the repository was cloned. */
export async function isShallow({ rootUri }: GitRepository): Promise<boolean> {
  try {
    await vscode.workspace.fs.stat(vscode.Uri.joinPath(rootUri, ".git", "shallow"));
    return true;
  } catch {
    return false;
  }
}
