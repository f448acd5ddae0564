/** What the language server and its clients say to each other beyond the Language Server Protocol. */
import type { Paper } from "../sheets/index.js";
import type {
  ComparisonLook,
  Picture,
  PictureChanges,
  PlanComparison,
  PlanOptions,
  SpotQuestion,
  SpotReading,
} from "../service/index.js";

/**
 * Client to server, a notification: whether pictures of a plan are wanted. While they are, each new
 * version of its text, and of the files it uses, is answered by a `gaugelath/picture`.
 */
export const WATCH_PICTURE = "gaugelath/watchPicture";

export interface WatchPicture {
  readonly uri: string;
  readonly watching: boolean;
  /** What each picture's changed pieces are told against, by a `gaugelath/changes` behind it; null for none. */
  readonly marks?: OldText | null;
  /** Whether pictures have the room unfolded as well; they don't unless it says so. */
  readonly room?: boolean;
}

/** Server to client, a notification: the newest picture of a watched plan. Older versions may be left out. */
export const PICTURE = "gaugelath/picture";

export type PictureNotice = Picture;

/** Server to client, a notification: the changed pieces of a watched plan's newest picture. */
export const CHANGES = "gaugelath/changes";

export type ChangesNotice = PictureChanges;

/** A text that a plan is compared with. The server knows no git: what it needs, the client tells. */
export interface OldText {
  /** Where it stands, or stood: what it uses is looked for from there. */
  readonly uri: string;
  /** null for the file's text as it is now. */
  readonly text: string | null;
  /** Where the files that it uses are read (READ_OLD); null for the files as they are now. */
  readonly revision: string | null;
}

/** Client to server, a notification: a plan's text in the last commit, for lenses over what changed; or null. */
export const LAST_COMMIT = "gaugelath/lastCommit";

export interface LastCommit {
  readonly uri: string;
  readonly old: OldText | null;
}

/**
 * Client to server, a notification: a comparison is watched from now on, or (`old` null) no longer. It
 * is told at once and after every change, by a `gaugelath/comparison`.
 */
export const WATCH_COMPARISON = "gaugelath/watchComparison";

export interface WatchComparison {
  /** The client's own number for it. */
  readonly id: number;
  readonly uri: string;
  readonly old: OldText | null;
  readonly look: ComparisonLook;
}

/** Server to client, a notification. */
export const COMPARISON = "gaugelath/comparison";

export interface ComparisonNotice {
  readonly id: number;
  readonly comparison: PlanComparison;
}

/** Server to client, a request: a file's text in a revision; null where it has none. */
export const READ_OLD = "gaugelath/readOld";

export interface ReadOld {
  readonly uri: string;
  readonly revision: string;
}

/** The command of a lens over a changed wall: its arguments are the plan's address and the wall's name. */
export const SHOW_CHANGES = "gaugelath.showChanges";

/** Client to server, a request: what stands at a spot of a wall. null when nothing does, or the version is gone. */
export const SPOT = "gaugelath/spot";

export type SpotRequest = SpotQuestion;
export type SpotAnswer = SpotReading | null;

/**
 * Client to server, a request: the best few layouts of a plan's wall, or (`wall` null) of the room or of all
 * walls. null where the plan isn't open, or when it was called off.
 */
export const OPTIONS = "gaugelath/options";

export interface OptionsRequest {
  readonly uri: string;
  readonly wall: string | null;
}

export type OptionsAnswer = PlanOptions | null;

/** Client to server, a request: the setter's sheet of a plan as it is written; null where it isn't open. */
export const SHEET = "gaugelath/sheet";

export interface SheetRequest {
  readonly uri: string;
}

export interface SheetAnswer {
  readonly version: number;
  readonly paper: Paper;
  readonly size: "letter" | "a4";
}

/** Client to server, a request: the sheet in a format; null where the plan isn't open. */
export const PRINT_SHEET = "gaugelath/printSheet";

/** PNG is not among them: a program that draws pixels is too large for an editor. */
export type PrintFormat = "pdf" | "md" | "json" | "csv" | "svg" | "dxf";

export interface PrintSheet {
  readonly uri: string;
  readonly format: PrintFormat;
}

export interface PrintedFile {
  /** Empty where the format has one file. */
  readonly part: string;
  /** In base64. */
  readonly data: string;
}

/** The settings that the server asks its client for, under the section `gaugelath` (workspace/configuration). */
export interface ServerSettings {
  /** Units in hovers and readings: the plan's own, or one system for all plans. */
  readonly units: "plan" | "inch" | "mm";
  /** Whether inlay hints show what was left to the solver, and what the plan takes. */
  readonly hints: boolean;
  /** Whether lenses stand over walls that changed since the last commit. */
  readonly changes: boolean;
  /** Milliseconds of quiet before a changed text is solved. */
  readonly debounce: number;
}

export const SETTINGS_SECTION = "gaugelath";

export const DEFAULT_SETTINGS: ServerSettings = {
  units: "plan",
  hints: true,
  changes: true,
  debounce: 60,
};

/** What the client says of itself in `initializationOptions`. */
export interface ClientAbilities {
  /** Whether it answers READ_FILE and FIND_PLANS: for file systems that the server can't reach. */
  readonly files?: boolean;
  /** The address of the folder with the server's files: a worker may not know where its script came from. */
  readonly folder?: string;
}

/** Server to client, a request: the text of a file, or null when it can't be read. */
export const READ_FILE = "gaugelath/readFile";

export interface ReadFile {
  readonly uri: string;
}

/** Server to client, a request: the addresses of the plans in these folders, at most so many. */
export const FIND_PLANS = "gaugelath/findPlans";

export interface FindPlans {
  readonly folders: readonly string[];
  readonly most: number;
}
