import type { OpeningKind, Side } from "../model/index.js";

/**
 * The plain scene: what is drawn, where, and which part of the plan it is. JSON-able data, so that it
 * can be posted to a webview. Lengths are millimetres of wall, rounded to the thousandth; x runs
 * right and y runs down. What belongs to a wall is told from that wall's left substrate and level
 * line, so it stays the same when another wall changes.
 */
export interface Scene {
  readonly title: string;
  /** One sentence a wall, for those who hear the picture. */
  readonly description: string;
  readonly view: PictureBox;
  /** The height of ordinary text. */
  readonly em: number;
  readonly walls: readonly WallScene[];
  /** Texts that belong to the whole plan: its title, the legend's, the findings', the cautions. */
  readonly labels: readonly Label[];
  readonly swatches: readonly Swatch[];
  readonly badges: readonly Badge[];
}

export interface PictureBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** x and y in turn. A ring is closed; an open line is not. */
export type Points = readonly number[];

export interface WallScene {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** Where the wall's left substrate meets its level line in the picture. */
  readonly at: Place;
  /** The bare wall. */
  readonly bare: Points;
  readonly bands: readonly Band[];
  readonly pieces: readonly PieceGroup[];
  readonly trims: readonly TrimScene[];
  readonly openings: readonly OpeningScene[];
  readonly holes: readonly HoleScene[];
  readonly hidden: readonly Hidden[];
  readonly lines: readonly RuledLine[];
  readonly dimensions: readonly DimensionRank[];
  readonly marks: readonly Mark[];
  readonly badges: readonly Badge[];
  readonly labels: readonly Label[];
}

/** `grout`: the ground that shows between pieces; `soft`: a movement joint; `bead`: one between a frame and what fills its opening; `build`: another wall's tile and bed, seen on end. */
export type BandKind = "grout" | "soft" | "bead" | "build";

export interface Band {
  readonly kind: BandKind;
  /** Names the band within its wall, such as `left` or `sash`. */
  readonly part: string;
  /** Outer ring first; those after it are cut out. */
  readonly rings: readonly Points[];
}

export type PieceKind = "whole" | "cut" | "notch" | "scribe" | "hole" | "sliver";

/** The pieces of one kind in one course. */
export interface PieceGroup {
  readonly kind: PieceKind;
  readonly course: number;
  /** Plain rectangles: left, top, right, bottom in turn. */
  readonly boxes: readonly number[];
  /** The others, each as its rings. */
  readonly shapes: readonly (readonly Points[])[];
}

export interface TrimScene {
  /** What the trim runs along: an opening's name or `edge`, then the side. */
  readonly part: string;
  readonly pieces: readonly Points[];
  /** Cut pieces are drawn apart from whole ones, like tiles. */
  readonly cut: readonly Points[];
}

export interface OpeningScene {
  readonly kind: OpeningKind;
  readonly name: string;
  readonly box: PictureBox;
}

export interface HoleScene {
  readonly name: string;
  readonly middle: Place;
  readonly radius: number;
  /** The rim of what covers it; null without a plate. */
  readonly plate: PlateScene | null;
}

/** A plate round a hole's middle: its radius, or half of its width and height. */
export type PlateScene =
  | { readonly kind: "round"; readonly radius: number }
  | { readonly kind: "square"; readonly halfAcross: number; readonly halfUp: number };

/** A strip that another wall's tile covers. */
export interface Hidden {
  readonly side: Side;
  readonly ring: Points;
  /** Where the covering tile ends. */
  readonly limit: Points;
}

export interface RuledLine {
  readonly kind: "level" | "centre" | "set" | "leader";
  readonly points: Points;
}

/** One row (or column) of dimensions. */
export interface DimensionRank {
  /** Names the rank within its wall, such as `bottom-1`. */
  readonly part: string;
  /** The measured stretches: four numbers each. */
  readonly lines: readonly number[];
  /** The slant ticks at their ends: the middle of each. */
  readonly ticks: readonly number[];
  /** Thin lines from what is measured to the dimension line. */
  readonly extensions: readonly number[];
}

export type SeverityMark = "error" | "warning" | "information";

/** The outline of a piece that a finding speaks of. */
export interface Mark {
  readonly severity: SeverityMark;
  readonly piece: string;
  readonly ring: Points;
}

/** A finding's number in the shape of its severity. */
export interface Badge {
  readonly severity: SeverityMark;
  readonly middle: Place;
  readonly radius: number;
  readonly number: string;
}

export type LabelRole =
  "title" | "heading" | "note" | "caption" | "dimension" | "number" | "name" | "caution";

export interface Label {
  readonly text: string;
  readonly role: LabelRole;
  /** Where the text's line begins, has its middle, or ends, on the line that letters stand on. */
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  readonly bold: boolean;
  /** Whether the text is turned to read upwards. */
  readonly upward: boolean;
  /** The most room that it can take. */
  readonly box: PictureBox;
}

export type SwatchKind =
  PieceKind | Fate | "grout" | "soft" | "hidden" | "build" | "trim" | "level" | "centre" | "set";

/** What became of a piece between two plans; one that was kept is drawn as a whole tile. */
export type Fate = "moved" | "recut" | "fresh" | "gone";

/** One sample of the legend. */
export interface Swatch {
  readonly kind: SwatchKind;
  readonly box: PictureBox;
}
