import { execFileSync } from "node:child_process";
import { type Workplace, workplace } from "./workplace.js";

const WHO = [
  "-c",
  "user.name=Nobody",
  "-c",
  "user.email=nobody@example.org",
  "-c",
  "commit.gpgsign=false",
];

/**
 * Runs git in a folder, apart from what the person who runs the tests has set, and from what a test
 * run puts into the environment: NODE_OPTIONS loads TypeScript.
 */
export function git(folder: string, ...words: readonly string[]): string {
  const { GIT_DIR: _, GIT_INDEX_FILE: __, NODE_OPTIONS: ___, ...env } = process.env;
  return execFileSync("git", ["-C", folder, ...WHO, ...words], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...env, GIT_CONFIG_GLOBAL: "/dev/null", GIT_CONFIG_NOSYSTEM: "1", GIT_PAGER: "cat" },
  });
}

/** A workplace that is a git repository; `history` makes its commits. */
export function repository(history: (place: Workplace) => void): Workplace {
  const place = workplace();
  before(() => {
    git(place.folder, "init", "-q", "-b", "main");
    history(place);
  });
  return place;
}

/** Writes files and commits all that is there. */
export function commit(
  place: Workplace,
  message: string,
  files: Readonly<Record<string, string>>,
): void {
  place.write(files);
  git(place.folder, "add", "-A");
  git(place.folder, "commit", "-q", "--allow-empty", "-m", message);
}
