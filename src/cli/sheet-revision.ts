import path from "node:path";
import { Failure } from "./failure.js";
import { Git } from "./git.js";
import { isInside, slashed } from "./paths.js";

/**
 * What git knows of the state that a plan is in: the commit, and whether the plan or what it uses was
 * changed since. null outside of a repository, before its first commit, and where git is not there.
 */
export function revisionOf(file: string, used: Iterable<string>): string | null {
  try {
    const git = new Git(path.dirname(file));
    const top = slashed(git.top());
    const commit = git.ask(["rev-parse", "--short", "HEAD"]);
    if (commit.status !== 0) return null;
    const short = commit.out.toString("utf8").trim();
    const files = [file, ...used].filter((each) => isInside(each, top));
    const changes = git.list(["status", "--porcelain", "-z", "--", ...files]);
    return changes.length === 0 ? short : `${short}, changed since`;
  } catch (error) {
    if (error instanceof Failure) return null;
    throw error;
  }
}
