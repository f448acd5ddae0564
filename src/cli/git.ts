import { spawnSync } from "node:child_process";
import process from "node:process";
import { Failure } from "./failure.js";

/** More than this is no list of files and no plan. */
const MOST_BYTES = 1 << 28;

/** What is needed of git, from a folder of a repository. Every question is a process of its own. */
export class Git {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** The repository's top folder. Throws a Failure outside of one. */
  top(): string {
    const { status, out, err } = this.ask(["rev-parse", "--show-toplevel"]);
    if (status === 0) return out.toString("utf8").replace(/\r?\n$/, "");
    const dubious = err.includes("dubious ownership");
    const hint = dubious
      ? "the repository belongs to another user: see git's safe.directory"
      : "without git, compare two files: gaugelath compare OLD NEW";
    throw new Failure(
      dubious
        ? `git does not read the repository of ${this.#folder}`
        : `${this.#folder} is in no git repository, so there is no revision to compare with`,
      hint,
    );
  }

  /** The commit that a revision names. Throws a Failure when there is none here. */
  commit(revision: string): string {
    const name = `${revision}^{commit}`;
    const asked = revision.startsWith("-")
      ? null
      : this.ask(["rev-parse", "--verify", "--quiet", name]);
    if (asked?.status === 0) return asked.out.toString("utf8").trim();
    if (this.#isShallow()) {
      throw new Failure(
        `revision ${revision} is not in this clone, which is shallow: it holds the latest commits alone`,
        "git fetch --unshallow brings the rest (in CI: a checkout with its whole history)",
      );
    }
    const unborn = this.ask(["rev-parse", "--verify", "--quiet", "HEAD"]).status !== 0;
    const hint = unborn ? "it has no commits yet" : "git log --oneline --all lists its commits";
    throw new Failure(`there is no revision ${revision} in this repository`, hint);
  }

  /** The answer to a question that must not fail. */
  read(words: readonly string[], input?: string): Buffer {
    const { status, out, err } = this.ask(words, input);
    if (status === 0) return out;
    throw new Failure(`git ${words[0]!} failed: ${err.split("\n")[0] ?? ""}`);
  }

  /** Entries that end in a zero byte, so that every letter a name may hold is itself. */
  list(words: readonly string[]): string[] {
    return this.read(words).toString("utf8").split("\0").slice(0, -1);
  }

  ask(
    words: readonly string[],
    input?: string,
  ): { status: number | null; out: Buffer; err: string } {
    const { status, stdout, stderr, error } = spawnSync("git", ["-C", this.#folder, ...words], {
      env: { ...process.env, LC_ALL: "C", GIT_OPTIONAL_LOCKS: "0", GIT_LITERAL_PATHSPECS: "1" },
      maxBuffer: MOST_BYTES,
      ...(input !== undefined && { input }),
    });
    if (error) {
      const missing = "code" in error && error.code === "ENOENT";
      throw new Failure(
        `git could not be started: ${missing ? "it is not installed, or not on the path" : error.message}`,
        "without git, compare two files: gaugelath compare OLD NEW",
      );
    }
    return { status, out: stdout, err: stderr.toString("utf8") };
  }

  #isShallow(): boolean {
    const { out } = this.ask(["rev-parse", "--is-shallow-repository"]);
    return out.toString("utf8").trim() === "true";
  }
}
