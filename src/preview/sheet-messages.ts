/** All that the extension and the page of a sheet say to each other; both ends check what comes in. */
import type { Paper } from "../sheets/index.js";
import { isList, isMessage, isObject, isText, objectOf, orNull, type Shapes } from "./shapes.js";

/** What a sheet's page keeps over a reload of the window, in the webview's own state. */
export interface SheetState {
  readonly uri: string;
}

/** From the extension to the page. */
export type ToSheet =
  /** Which plan's sheet is shown from now on. */
  | { readonly type: "plan"; readonly uri: string; readonly name: string }
  | { readonly type: "paper"; readonly paper: Paper }
  /** The plan can't be followed any more; why. The last sheet stays. */
  | { readonly type: "missing"; readonly why: string };

/** From the page to the extension. */
export type FromSheet =
  /** The script runs and listens. */
  | { readonly type: "ready" }
  | { readonly type: "save" }
  /** The sheet stands on the screen. */
  | { readonly type: "painted" };

const TO_SHEET: Shapes<ToSheet> = {
  plan: { uri: isText, name: isText },
  paper: { paper: objectOf({ title: isText, revision: orNull(isText), pages: isList }) },
  missing: { why: isText },
};

const FROM_SHEET: Shapes<FromSheet> = { ready: {}, save: {}, painted: {} };

/** Whether a value from the extension is a message that the page knows. */
export function isToSheet(value: unknown): value is ToSheet {
  return isMessage(TO_SHEET, value);
}

/** Whether a value from the page is a message that the extension knows. */
export function isFromSheet(value: unknown): value is FromSheet {
  return isMessage(FROM_SHEET, value);
}

/** Whether a value read from the webview's state is one that a sheet can begin from. */
export function isSheetState(value: unknown): value is SheetState {
  return isObject(value) && isText(value.uri);
}
