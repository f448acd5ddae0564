/** How findings are told. */
export type Format = "text" | "json" | "sarif";

/** What every command that reads plans is told. */
interface Reading {
  /** Whether a warning counts as much as an error. */
  readonly strict: boolean;
  /** The folder that `use` may not leave; null to find it. */
  readonly root: string | null;
}

export interface CheckRequest extends Reading {
  readonly command: "check";
  /** Files, folders, or `-` for standard input, as given. */
  readonly places: readonly string[];
  readonly format: Format;
}

export interface SolveRequest extends Reading {
  readonly command: "solve";
  readonly file: string;
  readonly format: "text" | "json";
  /** Where to write; null for standard output. */
  readonly output: string | null;
}

export interface DrawRequest extends Reading {
  readonly command: "draw";
  readonly file: string;
  /** Where to write; `-` for standard output. */
  readonly output: string;
}

export interface TidyRequest {
  readonly command: "tidy";
  /** Files, folders, or `-` for standard input, as given. */
  readonly places: readonly string[];
  /** Whether nothing is written, and an untidy plan makes the exit 1. */
  readonly check: boolean;
}

/** The language server over standard input and output. */
export interface ServeRequest {
  readonly command: "serve";
}

export type CommandName = "check" | "solve" | "draw" | "tidy" | "serve";

export type Request =
  | CheckRequest
  | SolveRequest
  | DrawRequest
  | TidyRequest
  | ServeRequest
  | { readonly command: "help"; readonly about: CommandName | null }
  | { readonly command: "version" };
