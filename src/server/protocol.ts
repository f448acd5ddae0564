/** What the language server and its clients say to each other beyond the Language Server Protocol. */
import type { Picture, SpotQuestion, SpotReading } from "../service/index.js";

/**
 * Client to server, a notification: whether pictures of a plan are wanted. While they are, each new
 * version of its text, and of the files it uses, is answered by a `gaugelath/picture`.
 */
export const WATCH_PICTURE = "gaugelath/watchPicture";

export interface WatchPicture {
  readonly uri: string;
  readonly watching: boolean;
}

/** Server to client, a notification: the newest picture of a watched plan. Older versions may be left out. */
export const PICTURE = "gaugelath/picture";

export type PictureNotice = Picture;

/** Client to server, a request: what stands at a spot of a wall. null when nothing does, or the version is gone. */
export const SPOT = "gaugelath/spot";

export type SpotRequest = SpotQuestion;
export type SpotAnswer = SpotReading | null;

/** The settings that the server asks its client for, under the section `gaugelath` (workspace/configuration). */
export interface ServerSettings {
  /** Units in hovers and readings: the plan's own, or one system for all plans. */
  readonly units: "plan" | "inch" | "mm";
  /** Whether inlay hints show what was left to the solver. */
  readonly hints: boolean;
  /** Milliseconds of quiet before a changed text is solved. */
  readonly debounce: number;
}

export const SETTINGS_SECTION = "gaugelath";

export const DEFAULT_SETTINGS: ServerSettings = { units: "plan", hints: true, debounce: 60 };

/** What the client says of itself in `initializationOptions`. */
export interface ClientAbilities {
  /** Whether it answers READ_FILE and FIND_PLANS: for file systems that the server can't reach. */
  readonly files?: boolean;
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
