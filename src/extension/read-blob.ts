import { execFile } from "node:child_process";
import { realpath } from "node:fs/promises";
import path from "node:path";

/** Where a file is looked for: in a commit of a repository. */
export interface BlobPlace {
  /** The git program. */
  readonly git: string;
  /** The repository's folder. */
  readonly root: string;
  readonly commit: string;
  /** The file, absolute. */
  readonly file: string;
}

/** Reads a file of a commit; null where the commit hasn't it. */
export type ReadBlob = (place: BlobPlace) => Promise<string | null>;

/** Larger files are no plans (the language reads two million characters at most). */
const LARGEST = 16_000_000;

/**
 * Reads a file of a commit as it was committed. The Git extension's own `show` would run a `textconv`
 * that the repository names, such as `gaugelath show`, and give its words in place of the plan.
 */
export async function readBlob({ git, root, commit, file }: BlobPlace): Promise<string | null> {
  const inside = await pathInside(root, file);
  if (inside === null) return null;
  const args = ["-C", root, "cat-file", "blob", `${commit}:${inside}`];
  return new Promise((resolve) => {
    execFile(git, args, { maxBuffer: LARGEST, encoding: "utf8" }, (error, text) =>
      resolve(error ? null : text),
    );
  });
}

/** As git names it; links on the way are followed where the plain way leads out of the repository. */
async function pathInside(root: string, file: string): Promise<string | null> {
  const plain = path.relative(root, file);
  if (isInside(plain)) return slashed(plain);
  const folder = await realpath(path.dirname(file)).catch(() => null);
  const real = await realpath(root).catch(() => null);
  if (folder === null || real === null) return null;
  const followed = path.relative(real, path.join(folder, path.basename(file)));
  return isInside(followed) ? slashed(followed) : null;
}

function isInside(relative: string): boolean {
  return relative !== "" && !relative.startsWith("..") && !path.isAbsolute(relative);
}

function slashed(file: string): string {
  return file.split(path.sep).join("/");
}
