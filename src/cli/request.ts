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
  /** null for all of them. */
  readonly shard: Shard | null;
}

/** One of `of` parts of the work, from 1: machines side by side take one each. */
export interface Shard {
  readonly part: number;
  readonly of: number;
}

export interface SolveRequest extends Reading {
  readonly command: "solve";
  readonly file: string;
  readonly format: "text" | "json";
  /** Where to write; null for standard output. */
  readonly output: string | null;
}

export interface OptionsRequest extends Reading {
  readonly command: "options";
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
  /** Whether the walls are drawn as the room unfolded. */
  readonly room: boolean;
}

/** What makes a comparison end with 1. */
export type FailOn = "new-findings" | "more-tiles" | "any";

export interface CompareRequest extends Reading {
  readonly command: "compare";
  /** OLD and NEW; or, with `from`, the files and folders that are looked at. */
  readonly places: readonly string[];
  /** A revision, or null to compare two places. */
  readonly from: string | null;
  /** A revision, or null for the files as they are. */
  readonly to: string | null;
  readonly format: "text" | "markdown" | "json" | "svg";
  /** The folder for pictures, or the file; null for standard output. */
  readonly output: string | null;
  readonly failOn: readonly FailOn[];
  readonly shard: Shard | null;
}

/** What a sheet is written as: the formats by the ending of a file, or all of them into a folder. */
export type SheetFormat = "pdf" | "md" | "json" | "csv" | "svg" | "png" | "dxf";

export interface SheetRequest extends Reading {
  readonly command: "sheet";
  readonly file: string;
  /** A file or a folder, or `-` for standard output. */
  readonly output: string;
  /** null where the output's ending says it. */
  readonly format: SheetFormat | null;
  /** null for what is usual where the plan's units are. */
  readonly paper: "letter" | "a4" | null;
  /** Ids of pages, names of walls, `cuts` or `purchases`; empty for all. */
  readonly only: readonly string[];
  /** null to ask git. */
  readonly revision: string | null;
}

/** The schema of a sheet's JSON. */
export interface SheetSchemaRequest {
  readonly command: "sheet-schema";
}

export interface ShowRequest extends Reading {
  readonly command: "show";
  readonly file: string;
}

export interface MergeRequest {
  readonly command: "merge";
  readonly files: readonly string[];
  readonly output: string | null;
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

export type CommandName =
  | "check"
  | "solve"
  | "options"
  | "draw"
  | "sheet"
  | "tidy"
  | "compare"
  | "show"
  | "merge"
  | "serve";

export type Request =
  | CheckRequest
  | SolveRequest
  | OptionsRequest
  | DrawRequest
  | SheetRequest
  | SheetSchemaRequest
  | CompareRequest
  | ShowRequest
  | MergeRequest
  | TidyRequest
  | ServeRequest
  | { readonly command: "help"; readonly about: CommandName | null }
  | { readonly command: "version" };
