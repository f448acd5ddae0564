import { statSync } from "node:fs";
import path from "node:path";
import { Failure } from "./failure.js";
import { findPlans, isPlanName } from "./find-plans.js";
import type { Git } from "./git.js";
import { isInside, shownPath, slashed } from "./paths.js";
import type { PlanPair } from "./plan-pairs.js";

/** The two states that are compared: a commit, and another or the work tree (null). */
export interface Revisions {
  readonly git: Git;
  readonly top: string;
  readonly from: string;
  readonly to: string | null;
}

/**
 * Plans of two revisions, each beside itself; a renamed plan is the same plan. Throws a Failure where
 * a place names no plan in either revision.
 */
export function pairRevisions(
  places: readonly string[],
  revisions: Revisions,
  folder: string,
): readonly PlanPair[] {
  const renamed = renamesBetween(revisions);
  const back = new Map([...renamed].map(([old, now]) => [now, old]));
  const before = new Set(plansAt(revisions, revisions.from));
  const pairs = new Map<string, PlanPair>();
  for (const place of places) {
    const absolute = slashed(path.resolve(folder, place));
    if (!isInside(absolute, revisions.top)) {
      throw new Failure(`${place} is outside of the repository ${revisions.top}`);
    }
    const found = pairsAt(absolute, revisions, before, back, renamed);
    if (found.length === 0) {
      throw new Failure(`${place}: there is no plan of that name in either revision`);
    }
    for (const pair of found) {
      const name = shownPath((pair.after ?? pair.before)!, folder);
      pairs.set(name, { ...pair, name });
    }
  }
  return [...pairs.values()];
}

type Pair = Omit<PlanPair, "name">;

function pairsAt(
  absolute: string,
  revisions: Revisions,
  before: ReadonlySet<string>,
  back: ReadonlyMap<string, string>,
  renamed: ReadonlyMap<string, string>,
): readonly Pair[] {
  const after = plansAfter(absolute, revisions);
  const own = after.map((file): Pair => {
    const old = back.get(file) ?? file;
    return { before: before.has(old) ? old : null, after: file };
  });
  const taken = new Set(own.map((pair) => pair.before));
  const gone = [...before]
    .filter((file) => isInside(file, absolute) && !taken.has(file) && !after.includes(file))
    // A plan that was renamed out of the place that was asked for is still told.
    .map((file): Pair => ({ before: file, after: renamed.get(file) ?? null }));
  return [...own, ...gone];
}

function plansAfter(absolute: string, revisions: Revisions): readonly string[] {
  if (revisions.to !== null) {
    return plansAt(revisions, revisions.to).filter((file) => isInside(file, absolute));
  }
  const found = statSync(absolute, { throwIfNoEntry: false });
  if (!found) return [];
  return findPlans([absolute], absolute).files;
}

function plansAt({ git, top }: Revisions, commit: string): readonly string[] {
  return git
    .list(["ls-tree", "-r", "-z", "--name-only", "--full-tree", commit])
    .filter(isPlanName)
    .map((file) => `${slashed(top)}/${file}`);
}

/** Old paths to new ones, of files that git takes for renamed. */
function renamesBetween({ git, top, from, to }: Revisions): ReadonlyMap<string, string> {
  const words = ["diff", "-z", "--name-status", "--diff-filter=R", "--find-renames"];
  const plainly = ["--no-ext-diff", "--no-textconv"];
  const entries = git.list([...words, ...plainly, from, ...(to === null ? [] : [to])]);
  const renamed = new Map<string, string>();
  const inTree = (file: string) => `${slashed(top)}/${file}`;
  // Status, old path and new path in turn.
  for (let i = 0; i < entries.length; i += 3) {
    renamed.set(inTree(entries[i + 1]!), inTree(entries[i + 2]!));
  }
  return renamed;
}
