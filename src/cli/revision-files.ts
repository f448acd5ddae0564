import path from "node:path";
import type { Source } from "../language/index.js";
import type { Diagnostic } from "../model/index.js";
import { decode, type Decoded } from "./decode.js";
import { Failure } from "./failure.js";
import type { Git } from "./git.js";
import { isInside, slashed } from "./paths.js";

/** Plans as they stood at one commit, with what they used then. Paths are those of the work tree. */
export class RevisionFiles {
  readonly #git: Git;
  readonly #top: string;
  readonly #commit: string;
  readonly #read = new Map<string, Buffer | null>();
  readonly #faults = new Map<string, readonly Diagnostic[]>();

  constructor(git: Git, top: string, commit: string) {
    this.#git = git;
    this.#top = slashed(top);
    this.#commit = commit;
  }

  /** Reads many files by one process. */
  fetch(files: readonly string[]): void {
    // A name with a line break can't be asked for in a line; it is read on its own.
    const wanted = files.filter((file) => !this.#read.has(file) && !file.includes("\n"));
    if (wanted.length < 2) return;
    const lines = wanted.map((file) => `${this.#objectOf(file)}\n`).join("");
    const answer = this.#git.read(["cat-file", "--batch"], lines);
    let at = 0;
    for (const file of wanted) {
      const end = answer.indexOf("\n", at);
      const size = /^[0-9a-f]+ blob (\d+)$/.exec(answer.toString("latin1", at, end))?.[1];
      at = end + 1;
      if (size === undefined) {
        this.#read.set(file, null);
        continue;
      }
      this.#read.set(file, answer.subarray(at, at + Number(size)));
      at += Number(size) + 1;
    }
  }

  /** The text of a plan. Throws a Failure when it can't be read. */
  open(file: string): string {
    const text = this.#text(file);
    if (text !== null) return text;
    throw new Failure(`${path.posix.relative(this.#top, file)}: it is not in ${this.#commit}`);
  }

  sourceOf(file: string): Source {
    return { file, root: this.#top, read: (used) => this.#use(used) };
  }

  faultsOf(file: string): readonly Diagnostic[] {
    return this.#faults.get(file) ?? [];
  }

  #use(file: string): string | null {
    if (!isInside(file, this.#top)) return null;
    try {
      return this.#text(file);
    } catch {
      return null;
    }
  }

  #text(file: string): string | null {
    if (!this.#read.has(file)) {
      const { status, out } = this.#git.ask(["cat-file", "blob", this.#objectOf(file)]);
      this.#read.set(file, status === 0 ? out : null);
    }
    const bytes = this.#read.get(file);
    if (!bytes) return null;
    const { text, diagnostics }: Decoded = decode(file, bytes);
    this.#faults.set(file, diagnostics);
    return text;
  }

  #objectOf(file: string): string {
    return `${this.#commit}:${path.posix.relative(this.#top, file)}`;
  }
}
