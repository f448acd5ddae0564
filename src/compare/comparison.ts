import type { AmountKind, Nm, Unit } from "../measure/index.js";
import type { Diagnostic, OpeningKind, Side, Supplies } from "../model/index.js";
import type { Cut, SolvedPlan } from "../solver/index.js";

/** One of two plans that are compared: as solved, and what was found in it. */
export interface ComparedPlan {
  readonly solved: SolvedPlan;
  readonly diagnostics: readonly Diagnostic[];
}

/** The same thing as it was and as it is. */
export interface Pair<T> {
  readonly before: T;
  readonly after: T;
}

/** As `Pair`, null where it wasn't or isn't there. */
export type Change<T> = Pair<T | null>;

/**
 * What differs between two plans. Plain data that can be posted and written as JSON; each fact holds
 * both states, so that the comparison the other way round is the same with both exchanged.
 */
export interface Comparison {
  readonly units: Pair<Unit>;
  readonly title: Pair<string>;
  /** Tiles and trims that came, went or were renamed, and what changed of them and of the plan. */
  readonly parts: readonly PartChange[];
  readonly facts: readonly Fact[];
  /** Every wall of either plan, in the order of the one after. */
  readonly walls: readonly WallComparison[];
  readonly findings: readonly FindingChange[];
  /**
   * What is bought, told of those things that either plan has. Worked out when it is first asked for (or
   * posted), since how tiles share cuts costs more than all the rest.
   */
  readonly quantities: readonly Quantity[];
}

export interface WallComparison {
  readonly name: Change<string>;
  readonly title: Change<string>;
  readonly parts: readonly PartChange[];
  readonly facts: readonly Fact[];
  /** How the courses moved as a whole; null where they didn't, or where the joint or face changed. */
  readonly shift: CourseShift | null;
  /** Whether the tile's face changed so much that no piece can be told to be an old one. */
  readonly anew: boolean;
  readonly pieces: PieceChanges;
  /** Courses that are set in one plan and that the other has otherwise: what is on a wall can't change. */
  readonly onWall: Pair<readonly OnWall[]>;
  readonly reading: Change<WallReading>;
  readonly alignments: readonly Change<Alignment>[];
}

export type PartKind = "tile" | "trim" | OpeningKind | "hole";

/** A part that is new (before is null), gone (after is null), or renamed. */
export interface PartChange {
  readonly kind: PartKind;
  readonly name: Change<string>;
}

/** What a fact is of. */
export type Subject =
  | { readonly of: "plan" | "wall" | "lay" }
  | { readonly of: "edge"; readonly side: Side }
  | { readonly of: PartKind; readonly name: Pair<string> };

export type FactName =
  | "title"
  | "bed"
  | "limit"
  | "size"
  | "place"
  | "diameter"
  | "plate"
  | "face"
  | "thickness"
  | "variation"
  | "warpage"
  | "edges"
  | "box"
  | "direction"
  | "lot"
  | "price"
  | "breakage"
  | "spares"
  | SupplyName
  | "meets"
  | "soft joint"
  | "joint"
  | "set"
  | "set top"
  | "reading"
  | "frame"
  | "inset"
  | "depth"
  | "fall"
  | "tile"
  | "bond"
  | "across"
  | "up";

/** What the plan says of these once each; which fact of it, a `Fact` says beside. */
export type SupplyName = keyof Supplies;

/** A thing that the plan says, or that the solver chose, and that changed. */
export interface Fact {
  readonly subject: Subject;
  readonly name: FactName;
  /** Which one, where there are several: a limit's name, a reading's place, a supply's fact. */
  readonly which: string | Nm | null;
  /** null where nothing was stated. */
  readonly before: Value | null;
  readonly after: Value | null;
}

export type Value =
  | { readonly kind: "length"; readonly nm: Nm }
  /** Across and up, or for a trim along and across. */
  | { readonly kind: "size"; readonly across: Nm; readonly up: Nm }
  | { readonly kind: "place"; readonly x: Nm; readonly y: Nm }
  | { readonly kind: "count"; readonly count: number }
  /** Whole milligrams, mm³ or mm². */
  | { readonly kind: "amount"; readonly of: AmountKind; readonly whole: number }
  | { readonly kind: "words"; readonly words: string };

/** Right and up; negative is left and down. */
export interface Shift {
  readonly across: Nm;
  readonly up: Nm;
}

/** How courses moved: up alike, across alike or, where the bond changed its step, in several ways. */
export interface CourseShift {
  readonly up: Nm;
  /** From the left, each once. */
  readonly across: readonly Nm[];
}

/** Courses on the wall, and how many of their pieces another plan would have cut differently or elsewhere across. */
export interface OnWall {
  /** The lay whose courses are counted by themselves; null for the wall's main ones. */
  readonly lay: string | null;
  /** From the lowest. */
  readonly courses: readonly number[];
  readonly pieces: number;
}

/** What became of the pieces of a wall: each is in one of the five. */
export interface PieceChanges {
  /** The same cut at the same place. */
  readonly kept: number;
  /** The same cut elsewhere. */
  readonly moved: readonly MovedPieces[];
  /** Cut otherwise than before. */
  readonly recut: readonly RecutPieces[];
  readonly fresh: readonly SeveralPieces[];
  readonly gone: readonly SeveralPieces[];
}

export interface MovedPieces {
  readonly by: Shift;
  readonly count: number;
}

/** Pieces that were cut alike and are cut alike now. */
export interface RecutPieces {
  readonly count: number;
  readonly before: CutPiece;
  readonly after: CutPiece;
  /** Their courses, before and after. */
  readonly courses: Pair<readonly number[]>;
}

export interface SeveralPieces {
  readonly count: number;
  readonly piece: CutPiece;
  readonly courses: readonly number[];
}

/** How a piece, or several that are alike but for a slope, is cut. */
export interface CutPiece {
  readonly cut: Cut;
  readonly width: Range;
  readonly height: Range;
  /** The corner that an L cut takes out; null of other cuts. */
  readonly notch: { readonly across: Nm; readonly up: Nm } | null;
  /** `at the left end`, `under window sash`, `in the field`. */
  readonly place: string;
}

/** From the least to the most; both alike where the pieces are. */
export interface Range {
  readonly least: Nm;
  readonly most: Nm;
}

export interface WallReading {
  readonly courses: number;
  readonly pieces: number;
  readonly cuts: number;
  /** Edges of tile that are mitred, at outside corners. */
  readonly mitred: number;
  /** The cut piece whose seen width or height is the smallest; null where none is cut. */
  readonly smallest: { readonly width: Nm; readonly height: Nm } | null;
}

/** Two things that stand in line. */
export type Alignment =
  | { readonly kind: "opening on a joint"; readonly opening: string; readonly side: Side }
  | { readonly kind: "centred"; readonly what: "tile" | "joint"; readonly on: string }
  | { readonly kind: "courses meet"; readonly wall: string };

/** A finding that came, went, or is there with other words, another weight or another waiver. */
export interface FindingChange {
  readonly before: Diagnostic | null;
  readonly after: Diagnostic | null;
}

/** How much is bought, before and after. */
export type Quantity = PieceQuantity | MaterialQuantity;

/** Tiles that are needed, or lengths of trim, where cuts share one as a setter would cut them. */
export interface PieceQuantity {
  readonly kind: "tile" | "trim";
  readonly name: Change<string>;
  readonly pieces: Pair<number>;
  /** Boxes with spares and breakage, where the plan says how many pieces one holds. */
  readonly boxes: Change<number>;
}

/** What all walls take of a material. */
export interface MaterialQuantity {
  readonly kind: "mortar" | "grout" | "sealant" | "membrane";
  readonly of: "area" | "volume";
  /** Whole mm² or mm³. */
  readonly amount: Pair<number>;
  readonly pack: "bag" | "tube" | null;
  /** Bags or tubes, where the plan says what one holds. */
  readonly packs: Change<number>;
}
