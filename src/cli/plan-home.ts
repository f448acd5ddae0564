import path from "node:path";
import type { Source } from "../language/index.js";
import { Failure } from "./failure.js";
import { Git } from "./git.js";
import { isInside, slashed } from "./paths.js";
import type { PlanFiles } from "./plan-files.js";
import { RevisionFiles } from "./revision-files.js";

/**
 * Where a plan is at home that git copied to a temporary place to have it shown: its path in the
 * repository, and what it used in the commit that brought this very text. null where there is no
 * repository, or none that knows such a plan.
 */
export function homeOf(file: string, folder: string, plans: PlanFiles): Source | null {
  try {
    const git = new Git(folder);
    const top = slashed(git.top());
    if (isInside(file, top)) return null;
    return atCommit(file, git, top) ?? inWorkTree(file, git, top, plans);
  } catch (error) {
    if (error instanceof Failure) return null;
    throw error;
  }
}

function atCommit(file: string, git: Git, top: string): Source | null {
  const { status, out } = git.ask(["hash-object", "--no-filters", "--", file]);
  if (status !== 0) return null;
  const hash = out.toString("utf8").trim();
  const log = ["log", "--all", "-m", "--raw", "-z", "--no-abbrev", "--no-renames", "--format=%H"];
  const entries = git.list([...log, `--find-object=${hash}`]);
  let commit = "";
  for (const [i, entry] of entries.entries()) {
    // A commit's name, then for each file its modes and objects, and its path.
    commit = /^\n?([0-9a-f]{40,64})$/.exec(entry)?.[1] ?? commit;
    const found = /:\d+ \d+ [0-9a-f]+ ([0-9a-f]+) /.exec(entry)?.[1];
    const home = entries[i + 1];
    if (found !== hash || home === undefined || !isNamedLike(home, file)) continue;
    return new RevisionFiles(git, top, commit).sourceOf(`${top}/${home}`);
  }
  return null;
}

/** A text that no commit has yet: the one plan of that name is taken for its home. */
function inWorkTree(file: string, git: Git, top: string, plans: PlanFiles): Source | null {
  const known = git.list(["ls-files", "-z", "--full-name", "--", top]);
  const [home, ...others] = known.filter((each) => isNamedLike(each, file));
  return home === undefined || others.length > 0 ? null : plans.sourceOf(`${top}/${home}`);
}

/** git names its copy as the file, or with letters of chance and `_` before it. */
function isNamedLike(home: string, file: string): boolean {
  const [own, copy] = [path.posix.basename(home), path.posix.basename(file)];
  return copy === own || copy.endsWith(`_${own}`);
}
