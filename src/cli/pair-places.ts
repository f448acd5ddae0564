import { statSync } from "node:fs";
import path from "node:path";
import { Failure, systemReason } from "./failure.js";
import { findPlans } from "./find-plans.js";
import { shownPath, slashed } from "./paths.js";
import type { PlanPair } from "./plan-pairs.js";

/** Pairs two files, or the plans of two folders by their paths in them. Throws a Failure. */
export function pairPlaces(places: readonly string[], folder: string): readonly PlanPair[] {
  const [old, now] = places.map((place) => path.resolve(folder, place)) as [string, string];
  const [oldFolder, nowFolder] = places.map((place) => isFolder(place, folder)) as [
    boolean,
    boolean,
  ];
  if (!oldFolder && !nowFolder) {
    const [before, after] = [slashed(old), slashed(now)];
    return [{ name: shownPath(after, folder), before, after }];
  }
  if (oldFolder !== nowFolder) {
    throw new Failure("one of the two is a folder", "compare two files, or two folders");
  }
  const [before, after] = [plansIn(old), plansIn(now)];
  const names = [...new Set([...after.keys(), ...before.keys()])].sort();
  return names.map((name) => ({
    name,
    before: before.get(name) ?? null,
    after: after.get(name) ?? null,
  }));
}

function isFolder(place: string, folder: string): boolean {
  try {
    return statSync(path.resolve(folder, place)).isDirectory();
  } catch (error) {
    throw new Failure(`${place}: ${systemReason(error)}`);
  }
}

/** A folder's plans by their paths in it; one without plans is as good as an empty one. */
function plansIn(folder: string): ReadonlyMap<string, string> {
  const { files } = findPlans(["."], folder);
  return new Map(files.map((file) => [shownPath(file, folder), file]));
}
