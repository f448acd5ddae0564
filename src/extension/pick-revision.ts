import * as vscode from "vscode";
import type { GitCommit, GitRef, GitRepository } from "./git-api.js";
import { isShallow, SHALLOW, shortHash, subjectOf } from "./git-history.js";
import { planName } from "./plan-name.js";

/** So many commits of a plan are offered; older ones can be named. */
const MOST_COMMITS = 60;

interface RevisionItem extends vscode.QuickPickItem {
  /** null asks for one in words; undefined for what can't be picked. */
  readonly revision?: string | null;
}

/** Asks for a revision: a commit that touched the plan, a branch, a tag, or any by its name. null when it was called off. */
export async function pickRevision(
  uri: vscode.Uri,
  repository: GitRepository,
): Promise<string | null> {
  const chosen = await vscode.window.showQuickPick(itemsFor(uri, repository), {
    title: `Compare ${planName(uri)}`,
    placeHolder: "The revision that counts as before",
    matchOnDescription: true,
    matchOnDetail: true,
  });
  // What only tells something has none.
  if (chosen?.revision === undefined) return null;
  return chosen.revision ?? (await nameRevision());
}

async function nameRevision(): Promise<string | null> {
  const name = await vscode.window.showInputBox({
    title: "A revision",
    prompt: "A commit, branch or tag, or any other name that git knows, such as HEAD~3",
  });
  return name?.trim() ? name.trim() : null;
}

async function itemsFor(uri: vscode.Uri, repository: GitRepository): Promise<RevisionItem[]> {
  const [commits, refs, shallow] = await Promise.all([
    repository.log({ maxEntries: MOST_COMMITS, path: uri.fsPath }).catch((): GitCommit[] => []),
    repository.getRefs({ sort: "committerdate" }).catch((): GitRef[] => []),
    isShallow(repository),
  ]);
  const named = (type: GitRef["type"]): RevisionItem[] =>
    refs.flatMap((ref) =>
      ref.type === type && ref.name !== undefined
        ? [{ label: ref.name, description: shortHash(ref.commit ?? ""), revision: ref.name }]
        : [],
    );
  return [
    ...group(`Commits of ${planName(uri)}`, commits.map(commitItem)),
    ...(shallow ? [{ label: "Older commits are not here", detail: SHALLOW }] : []),
    ...group("Branches", [...named(0), ...named(1)]),
    ...group("Tags", named(2)),
    { label: "Another revision...", alwaysShow: true, revision: null },
  ];
}

function group(label: string, items: readonly RevisionItem[]): readonly RevisionItem[] {
  if (items.length === 0) return [];
  return [{ label, kind: vscode.QuickPickItemKind.Separator }, ...items];
}

function commitItem(commit: GitCommit): RevisionItem {
  const told = [commit.authorName, commit.authorDate?.toLocaleDateString()].filter(Boolean);
  return {
    label: subjectOf(commit),
    description: [shortHash(commit.hash), ...told].join(", "),
    revision: commit.hash,
  };
}
