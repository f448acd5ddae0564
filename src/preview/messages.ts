/** All that the extension and the preview say to each other; both ends check what comes in. */
import type { SourceRange } from "../model/index.js";
import type {
  Cursor,
  Picture,
  PictureChanges,
  PlanOptions,
  SpotQuestion,
  SpotReading,
} from "../service/index.js";
import {
  isCount,
  isFlag,
  isList,
  isMessage,
  isNumber,
  isObject,
  isText,
  objectOf,
  orNull,
  type Check,
  type Shapes,
} from "./shapes.js";

export type ExportFormat = "svg" | "png";

/** What the preview keeps over a reload of the window, in the webview's own state. */
export interface PreviewState {
  readonly uri: string;
  readonly pinned: boolean;
  /** Whether changed pieces are marked; they are unless it says no. */
  readonly marked?: boolean;
  /** Whether the room is shown unfolded; it isn't unless it says so. */
  readonly room?: boolean;
  /** The preview's own: zoom, place, layers, wall. */
  readonly view?: unknown;
}

/** What changed in a picture, and since when. */
export interface ToldChanges {
  readonly changes: PictureChanges;
  /** Such as `the last commit, 1a2b3c4 "Move the niche"`. */
  readonly since: string;
}

/** From the extension to the preview. */
export type ToPreview =
  /** Which plan is shown from now on; its pictures follow. */
  | {
      readonly type: "plan";
      readonly uri: string;
      readonly name: string;
      readonly pinned: boolean;
      readonly marked: boolean;
    }
  | { readonly type: "picture"; readonly picture: Picture }
  /** The pieces that changed, to be marked; null for none. */
  | { readonly type: "changes"; readonly uri: string; readonly told: ToldChanges | null }
  /** The plan's file was deleted or can't be read. */
  | { readonly type: "gone"; readonly uri: string; readonly message: string }
  /** Where the text's cursor stands, or null when it is in no shown plan. */
  | { readonly type: "cursor"; readonly cursor: Cursor | null }
  | { readonly type: "spot"; readonly id: number; readonly reading: SpotReading | null }
  /** The layouts that were asked for. */
  | { readonly type: "options"; readonly options: PlanOptions }
  /** Asks for what is seen as a picture; answered by `exported`. */
  | { readonly type: "export"; readonly format: ExportFormat };

/** From the preview to the extension. */
export type FromPreview =
  /** The script runs and listens. */
  | { readonly type: "ready" }
  | { readonly type: "pin"; readonly pinned: boolean }
  /** Whether changed pieces are to be marked. */
  | { readonly type: "mark"; readonly marked: boolean }
  /** Whether pictures are to have the room unfolded. */
  | { readonly type: "room"; readonly shown: boolean }
  /** Asks for the best few layouts of a wall, or (null) of all of the plan. */
  | { readonly type: "options"; readonly uri: string; readonly wall: string | null }
  /** Writes one of them into the text: of the version, the group and the option of that number from 0. */
  | {
      readonly type: "take";
      readonly version: number;
      readonly group: number;
      readonly option: number;
    }
  /** Shows the whole comparison. */
  | { readonly type: "compare" }
  /** Shows a place of the text. */
  | { readonly type: "select"; readonly uri: string; readonly range: SourceRange }
  | { readonly type: "spot"; readonly id: number; readonly question: SpotQuestion }
  /** `data` is the SVG's text, or the PNG in base64. */
  | { readonly type: "exported"; readonly format: ExportFormat; readonly data: string }
  /** A picture stands on the screen. */
  | { readonly type: "painted"; readonly uri: string; readonly version: number }
  /** Something failed in the preview. */
  | { readonly type: "fault"; readonly message: string };

const isFormat: Check = (value) => value === "svg" || value === "png";
const isPosition = objectOf({ line: isCount, character: isCount });
const isRange = objectOf({ start: isPosition, end: isPosition });
const isScene = objectOf({ walls: isList, view: isObject });
const isPicture = objectOf({
  uri: isText,
  version: isNumber,
  whole: isFlag,
  simplified: isFlag,
  scene: isScene,
  unfolds: isFlag,
  room: orNull(isScene),
  walls: isList,
  findings: isList,
  blocks: isList,
});
const isToldChanges = objectOf({
  changes: objectOf({ uri: isText, version: isNumber, headline: isText, walls: isList }),
  since: isText,
});
const isReading = objectOf({ title: isText, facts: isList, outline: isList });
const isQuestion = objectOf({
  uri: isText,
  version: isNumber,
  wall: isText,
  x: isNumber,
  y: isNumber,
});

const isOptions = objectOf({
  uri: isText,
  version: isNumber,
  wall: orNull(isText),
  groups: isList,
  more: isCount,
});

const TO_PREVIEW: Shapes<ToPreview> = {
  plan: { uri: isText, name: isText, pinned: isFlag, marked: isFlag },
  picture: { picture: isPicture },
  changes: { uri: isText, told: orNull(isToldChanges) },
  gone: { uri: isText, message: isText },
  cursor: { cursor: orNull(objectOf({ uri: isText, position: isPosition })) },
  spot: { id: isCount, reading: orNull(isReading) },
  options: { options: isOptions },
  export: { format: isFormat },
};

const FROM_PREVIEW: Shapes<FromPreview> = {
  ready: {},
  pin: { pinned: isFlag },
  mark: { marked: isFlag },
  room: { shown: isFlag },
  options: { uri: isText, wall: orNull(isText) },
  take: { version: isNumber, group: isCount, option: isCount },
  compare: {},
  select: { uri: isText, range: isRange },
  spot: { id: isCount, question: isQuestion },
  exported: { format: isFormat, data: isText },
  painted: { uri: isText, version: isNumber },
  fault: { message: isText },
};

/** Whether a value from the extension is a message that the preview knows. */
export function isToPreview(value: unknown): value is ToPreview {
  return isMessage(TO_PREVIEW, value);
}

/** Whether a value from the preview is a message that the extension knows. */
export function isFromPreview(value: unknown): value is FromPreview {
  return isMessage(FROM_PREVIEW, value);
}

/** Whether a value read from the webview's state is one that a preview can begin from. */
export function isPreviewState(value: unknown): value is PreviewState {
  return objectOf({ uri: isText, pinned: isFlag })(value);
}
