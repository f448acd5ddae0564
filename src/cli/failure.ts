/**
 * Why a command could not run (exit 2): said on standard error, never as a stack of calls. `hint`
 * says what to do instead.
 */
export class Failure extends Error {
  readonly hint: string | null;

  constructor(message: string, hint: string | null = null) {
    super(message);
    this.name = "Failure";
    this.hint = hint;
  }

  /** By its name, since what is bundled apart (cli/sheet.cjs) has a class of its own. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return value instanceof Error && value.name === "Failure" && "hint" in value;
  }
}

/** What the system says about a file, in words of a person. */
export function systemReason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "permission denied",
  EPERM: "permission denied",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of its path is no folder",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links go round in a circle",
  EROFS: "the disk can only be read",
  ENOSPC: "the disk is full",
  EMFILE: "too many files are open",
};
