import type { OpeningKind, Side } from "../model/index.js";
import type { Span } from "./line-table.js";
import type { AcrossStatement, LayStatement, SetStatement, UpStatement } from "./syntax-lay.js";
import type { SoftJointStatement } from "./syntax-soft-joint.js";
import type {
  AllowStatement,
  AtStatement,
  Block,
  BrokenStatement,
  Expression,
  Literal,
  Measured,
  SizeStatement,
  Stated,
  Word,
} from "./syntax-statement.js";
import type { PreferStatement } from "./syntax-wishes.js";
import type { LINING_WORDS } from "./vocabulary.js";

export interface WallStatement extends Block<"wall", WallPart> {
  readonly title: Word | null;
}

export type WallPart =
  | SizeStatement
  | OutlineStatement
  | LegStatement
  | EdgeStatement
  | OpeningStatement
  | HoleStatement
  | LayStatement
  | SetStatement
  | SoftJointStatement
  | PreferStatement
  | AllowStatement
  | BrokenStatement;

/** `outline X, Y to X, Y to ...`. */
export interface OutlineStatement extends Stated<"outline"> {
  readonly corners: readonly WrittenCorner[];
}

export interface WrittenCorner extends Span {
  readonly x: Expression;
  readonly y: Expression;
}

/** `leg left W down L [KIND] [movement L]`. */
export interface LegStatement extends Stated<"leg"> {
  readonly side: "left" | "right";
  readonly across: Expression;
  readonly down: Expression;
  /** null: the floor. */
  readonly meets: (WrittenMeeting & { readonly kind: "plain" })["what"] | null;
  /** null: the default joint. */
  readonly joint: JointClause | null;
}

export interface EdgeStatement extends Stated<"edge"> {
  readonly side: Side;
  readonly meets: WrittenMeeting;
  readonly clauses: readonly EdgeClause[];
}

export type WrittenMeeting =
  | {
      readonly kind: "plain";
      readonly what: "pan" | "tub" | "floor" | "ceiling" | "counter" | "wall";
    }
  | {
      readonly kind: "corner";
      readonly wall: Word;
      readonly lap: Word & { readonly text: "under" | "over" };
    }
  | {
      readonly kind: "outside";
      readonly wall: Word;
      readonly lap: Word & { readonly text: "under" | "mitre" };
    }
  | {
      readonly kind: "outside";
      readonly wall: Word;
      readonly lap: Word & { readonly text: "over" };
      readonly trim: Word | null;
    }
  | { readonly kind: "free"; readonly trim: Word | null };

export type EdgeClause = MeasuredClause | JointClause;

export interface MeasuredClause extends Stated<"measured"> {
  readonly readings: readonly WrittenReading[];
}

export interface WrittenReading extends Span {
  readonly at: Expression;
  readonly off: Expression;
}

export interface JointClause extends Stated<"joint-clause"> {
  readonly joint: "movement" | "joint";
  readonly width: Expression;
}

export interface OpeningStatement extends Block<"opening", OpeningPart> {
  readonly opening: OpeningKind;
}

export type OpeningPart =
  | AtStatement
  | SizeStatement
  | FrameStatement
  | Measured<"inset">
  | Measured<"movement">
  | Measured<"depth">
  | Measured<"fall">
  | Stated<"untiled">
  | LiningStatement
  | AllowStatement
  | BrokenStatement;

/** `back mosaic stack joint 1/16`: how the inside of an opening, or a surface of it, is laid. */
export interface LiningStatement extends Stated<"lining"> {
  readonly of: (typeof LINING_WORDS)[number];
  readonly tile: Word;
  /** null where the bond is the usual one there. */
  readonly bond: { readonly offset: Literal | null } | null;
  readonly joint: Expression | null;
  readonly across: LiningAcross | null;
  readonly up: LiningUp | null;
}

/** `across tile centred on shelf`, in a lining. */
export interface LiningAcross extends Span {
  readonly choice:
    | { readonly kind: "full-tile"; readonly from: "left" | "right" | "front" | "back" }
    | Extract<AcrossStatement["choice"], { readonly kind: "centred-on" | "centred-at" }>;
}

/** `up full course from bottom`, in a lining. */
export interface LiningUp extends Span {
  readonly choice:
    | { readonly kind: "full-course"; readonly from: "bottom" | "top" | "front" | "back" }
    | Extract<UpStatement["choice"], { readonly kind: "joint" }>;
}

export interface FrameStatement extends Stated<"frame"> {
  readonly trim: Word;
  readonly join: "mitre" | "butt";
}

export interface HoleStatement extends Stated<"hole"> {
  readonly name: Word;
  readonly x: Expression;
  readonly y: Expression;
  readonly across: Expression;
  readonly plate: WrittenPlate | null;
}

/** `plate 6 1/2` is round, `plate 6 x 4` has four sides. */
export interface WrittenPlate extends Span {
  readonly across: Expression;
  readonly up: Expression | null;
}
