import type { Side } from "../model/index.js";
import type { Span } from "./line-table.js";
import type { BetweenStatement, SoftJointStatement } from "./syntax-soft-joint.js";
import type {
  AllowStatement,
  AtStatement,
  Block,
  BrokenStatement,
  Expression,
  Literal,
  SizeStatement,
  Stated,
  Word,
} from "./syntax-statement.js";

/** Its name is the tile's. */
export type LayStatement = Block<"lay", LayPart>;

export type LayPart =
  | BondStatement
  | JointStatement
  | AcrossStatement
  | UpStatement
  | CoversStatement
  | AtStatement
  | SizeStatement
  | LayBesideStatement
  | LayCoursesStatement
  | BetweenStatement
  | SetStatement
  | SoftJointStatement
  | AllowStatement
  | BrokenStatement;

/** `covers bottom to 36`: up to where a lay reaches from one side of the wall. */
export interface CoversStatement extends Stated<"covers"> {
  readonly from: Side;
  readonly to: Expression;
}

/** `over dado`: the lay that this one stands on, or hangs under. */
export interface LayBesideStatement extends Stated<"lay-beside"> {
  readonly relation: "over" | "under";
  readonly lay: Word;
}

/** `courses 8 of field, 1 of liner, rest of field`, from the bottom up. */
export interface LayCoursesStatement extends Stated<"lay-courses"> {
  readonly runs: readonly CourseRun[];
}

export interface CourseRun extends Span {
  /** null for the rest. */
  readonly many: Literal | null;
  /** null for the lay's own tile. */
  readonly tile: Word | null;
}

/** `set courses 1 to 6 joint 1/16 top 36 1/8 at left`: what is on the wall already. */
export interface SetStatement extends Stated<"set"> {
  readonly first: Literal;
  readonly last: Literal;
  /** null: the lay's own joint. */
  readonly joint: Expression | null;
  /** Where the top of the last course was measured; none: as the plan has it. */
  readonly tops: readonly WrittenTop[];
}

export interface WrittenTop extends Span {
  readonly y: Expression;
  /** null: all along. */
  readonly at: "left" | "right" | Expression | null;
}

export interface BondStatement extends Stated<"bond"> {
  /** null for a stack bond. */
  readonly offset: Literal | null;
}

export interface JointStatement extends Stated<"joint"> {
  readonly min: Expression;
  readonly max: Expression | null;
}

export interface AcrossStatement extends Stated<"across"> {
  readonly choice:
    | { readonly kind: "full-tile"; readonly from: "left" | "right" }
    | { readonly kind: "centred-on"; readonly what: "tile" | "joint"; readonly name: Word }
    | { readonly kind: "centred-at"; readonly what: "tile" | "joint"; readonly x: Expression }
    | { readonly kind: "wrapped"; readonly wall: Word; readonly joint: "added" | "swallowed" }
    | { readonly kind: "mirrored"; readonly wall: Word };
}

export interface UpStatement extends Stated<"up"> {
  readonly choice:
    | { readonly kind: "full-course"; readonly from: "bottom" | "top" }
    | { readonly kind: "at-opening"; readonly relation: "under" | "over"; readonly name: Word }
    | { readonly kind: "joint"; readonly y: Expression };
}
