import { readdirSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import { Failure, systemReason } from "./failure.js";
import { slashed } from "./paths.js";

/** What a place that was given holds: plans, or why it holds none. */
export interface Found {
  /** Absolute, with forward slashes; each file once, in the order given, a folder's by name. */
  readonly files: readonly string[];
  readonly failures: readonly Failure[];
}

const EXTENSION = ".tileplan";

/** Whether a file's name is a plan's. */
export function isPlanName(file: string): boolean {
  return file.endsWith(EXTENSION);
}

/** Finds the plans that the places name; a folder stands for every plan in it and below it. */
export function findPlans(places: readonly string[], folder: string): Found {
  const files: string[] = [];
  const failures: Failure[] = [];
  const seen = new Set<string>();
  for (const place of places) {
    try {
      for (const file of plansAt(path.resolve(folder, place), place)) {
        const real = realpathSync(file);
        if (!seen.has(real)) files.push(slashed(file));
        seen.add(real);
      }
    } catch (error) {
      if (error instanceof Failure) failures.push(error);
      else failures.push(new Failure(`${place}: ${systemReason(error)}`));
    }
  }
  return { files, failures };
}

function plansAt(absolute: string, place: string): readonly string[] {
  if (!statSync(absolute).isDirectory()) return [absolute];
  const plans = plansBelow(absolute);
  if (plans.length > 0) return plans;
  throw new Failure(`${place}: there is no ${EXTENSION} file in this folder or below it`);
}

/** Hidden folders and installed packages are left out; links to folders are not followed. */
function plansBelow(folder: string): readonly string[] {
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const inside = path.join(folder, entry.name);
      if (entry.isDirectory()) {
        const left = entry.name.startsWith(".") || entry.name === "node_modules";
        return left ? [] : plansBelow(inside);
      }
      return isPlanName(entry.name) ? [inside] : [];
    });
}
