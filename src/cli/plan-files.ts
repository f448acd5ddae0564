import { existsSync, readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import type { Source } from "../language/index.js";
import type { Diagnostic } from "../model/index.js";
import { decode, LARGEST_FILE, type Decoded } from "./decode.js";
import { Failure, systemReason } from "./failure.js";
import { isInside, shownPath, slashed } from "./paths.js";

/** The files that a run has read: the plans themselves, and what they use. */
export class PlanFiles {
  readonly #folder: string;
  readonly #root: string | null;
  readonly #read = new Map<string, Decoded | null>();
  readonly #used = new Set<string>();

  /** `root`: the folder that `use` may not leave, or null to find one for each plan. */
  constructor(folder: string, root: string | null) {
    this.#folder = folder;
    this.#root = root === null ? null : this.#existingFolder(root);
  }

  /** Reads a plan. Throws a Failure when it can't be. */
  open(file: string): string {
    const found = this.#read.get(file);
    if (found) return found.text;
    try {
      return this.take(file, readBytes(file));
    } catch (error) {
      if (error instanceof Failure) throw this.#named(file, error.message, error.hint);
      throw this.#named(file, systemReason(error), null);
    }
  }

  /** Takes bytes (of standard input) as a file's. */
  take(file: string, bytes: Uint8Array): string {
    const decoded = decode(file, bytes);
    this.#read.set(file, decoded);
    return decoded.text;
  }

  /** Where a plan stands, for the language. */
  sourceOf(file: string): Source {
    const root = this.#root ?? rootOf(path.dirname(file), this.#folder);
    return { file, root: slashed(root), read: (used) => this.#use(used, root) };
  }

  /** The text of a file that this run has read. */
  textOf(file: string): string {
    return this.#read.get(file)?.text ?? "";
  }

  /** What was wrong with a file's bytes. */
  faultsOf(file: string): readonly Diagnostic[] {
    return this.#read.get(file)?.diagnostics ?? [];
  }

  /** The files that were reached by `use`. */
  get used(): ReadonlySet<string> {
    return this.#used;
  }

  #use(file: string, root: string): string | null {
    if (!this.#read.has(file)) this.#read.set(file, readWithin(file, root));
    const found = this.#read.get(file);
    if (found) this.#used.add(file);
    return found?.text ?? null;
  }

  #existingFolder(root: string): string {
    const folder = path.resolve(this.#folder, root);
    if (statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return folder;
    throw new Failure(`--root ${root}: there is no such folder`);
  }

  #named(file: string, reason: string, hint: string | null): Failure {
    return new Failure(`${shownPath(file, this.#folder)}: ${reason}`, hint);
  }
}

/**
 * The folder that a plan's `use` may not leave: the nearest one upward that git keeps, else the
 * working folder where the plan is inside it, else the plan's own.
 */
function rootOf(planFolder: string, workingFolder: string): string {
  for (let folder = planFolder; ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, ".git"))) return folder;
    if (folder === path.dirname(folder)) break;
  }
  return isInside(planFolder, workingFolder) ? workingFolder : planFolder;
}

/** A used file, unless it can't be read or a link leads out of the root. */
function readWithin(file: string, root: string): Decoded | null {
  try {
    if (!isInside(realpathSync(file), realpathSync(root))) return null;
    return decode(file, readBytes(file));
  } catch {
    return null;
  }
}

function readBytes(file: string): Uint8Array {
  const size = statSync(file).size;
  if (size <= LARGEST_FILE) return readFileSync(file);
  throw new Failure("it is too large for a plan", "the limit is 16 MB");
}
