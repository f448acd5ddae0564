/** All that the extension and the page of a comparison say to each other; both ends check what comes in. */
import type { ComparisonLook, PlanComparison } from "../service/index.js";
import {
  type Check,
  isFlag,
  isList,
  isMessage,
  isNumber,
  isObject,
  isText,
  objectOf,
  orNull,
  type Shapes,
} from "./shapes.js";

/** What a plan is compared with. */
export type Against =
  | { readonly kind: "last commit" }
  | { readonly kind: "revision"; readonly revision: string }
  | { readonly kind: "plan"; readonly uri: string };

/** What a comparison's page keeps over a reload of the window, in the webview's own state. */
export interface ComparisonState {
  readonly uri: string;
  readonly against: Against;
  readonly look: ComparisonLook;
  /** Where the slider's handle stands, from the left, as a share of the room. */
  readonly handle?: number;
}

/** From the extension to the page. */
export type ToComparison =
  /** Which plan is compared with what from now on. */
  | {
      readonly type: "plan";
      readonly uri: string;
      readonly name: string;
      readonly against: Against;
      readonly look: ComparisonLook;
    }
  /** What the old state is called, such as `the last commit, 1a2b3c4 "Move the niche"`. */
  | { readonly type: "against"; readonly words: string }
  /** There is nothing to compare with, or no longer; why. */
  | { readonly type: "missing"; readonly why: string }
  | { readonly type: "comparison"; readonly comparison: PlanComparison };

/** From the page to the extension. */
export type FromComparison =
  /** The script runs and listens. */
  | { readonly type: "ready" }
  /** Another picture is wanted. */
  | { readonly type: "look"; readonly look: ComparisonLook }
  /** A picture stands on the screen. */
  | { readonly type: "painted"; readonly version: number; readonly way: ComparisonLook["way"] };

const isWay: Check = (value) => value === "sides" || value === "overlay" || value === "slider";
const isLook = objectOf({ way: isWay, wall: orNull(isText) });
const isAgainst: Check = (value) => {
  if (!isObject(value)) return false;
  if (value.kind === "revision") return isText(value.revision);
  return value.kind === "plan" ? isText(value.uri) : value.kind === "last commit";
};
const isScene = objectOf({ walls: isList, view: isObject });
const isPicture: Check = (value) => {
  if (!isObject(value) || !isWay(value.way)) return false;
  if (value.way !== "slider") return isScene(value.scene);
  return orNull(isScene)(value.before) && orNull(isScene)(value.after);
};

const TO_COMPARISON: Shapes<ToComparison> = {
  plan: { uri: isText, name: isText, against: isAgainst, look: isLook },
  against: { words: isText },
  missing: { why: isText },
  comparison: {
    comparison: objectOf({
      uri: isText,
      version: isNumber,
      whole: isFlag,
      oldWhole: isFlag,
      headline: isText,
      sections: isList,
      walls: isList,
      wall: orNull(isText),
      picture: orNull(isPicture),
    }),
  },
};

const FROM_COMPARISON: Shapes<FromComparison> = {
  ready: {},
  look: { look: isLook },
  painted: { version: isNumber, way: isWay },
};

/** Whether a value from the extension is a message that the page knows. */
export function isToComparison(value: unknown): value is ToComparison {
  return isMessage(TO_COMPARISON, value);
}

/** Whether a value from the page is a message that the extension knows. */
export function isFromComparison(value: unknown): value is FromComparison {
  return isMessage(FROM_COMPARISON, value);
}

/** Whether a value read from the webview's state is one that a comparison can begin from. */
export function isComparisonState(value: unknown): value is ComparisonState {
  return objectOf({ uri: isText, against: isAgainst, look: isLook })(value);
}
