import type { Scene } from "../../drawing/index.js";

/**
 * A sheet of paper as it is printed: marks at places, and nothing left to decide. Lengths are points,
 * 72 to the inch; x runs right and y runs down from the sheet's upper left corner.
 */
export interface Sheet {
  /** The id of the page that it is of, and which of that page's sheets it is, from 1. */
  readonly page: string;
  readonly part: number;
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export type Mark = TextMark | RuleMark | BoxMark | PictureMark;

export type Weight = "regular" | "bold";

/** One line of text; `y` is its baseline. */
export interface TextMark {
  readonly kind: "text";
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** How wide the print font sets it. */
  readonly width: number;
  readonly size: number;
  readonly weight: Weight;
}

/** A straight line through these points: x, y, x, y ... */
export interface RuleMark {
  readonly kind: "rule";
  readonly points: readonly number[];
  readonly weight: number;
  readonly dash: readonly number[];
}

/** A rectangle: filled with a grey from 0 (black) to 1, ruled round, or both. */
export interface BoxMark {
  readonly kind: "box";
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly fill: number | null;
  readonly outline: number | null;
}

/** A scene whose view's upper left corner stands here, so many points to its millimetre. */
export interface PictureMark {
  readonly kind: "picture";
  readonly scene: Scene;
  readonly left: number;
  readonly top: number;
  readonly scale: number;
}
