import type { LINING_WORDS } from "./vocabulary.js";
import type { Fraction, Quantity } from "../measure/index.js";
import type { OpeningKind, Side } from "../model/index.js";
import type { LineTable, Span } from "./line-table.js";
import type { SyntaxProblem } from "./syntax-problem.js";

/** A text as it is written: statements with the place of every part, no name looked up yet. */
export interface SyntaxTree {
  readonly text: string;
  readonly lines: LineTable;
  readonly statements: readonly PlanStatement[];
  readonly problems: readonly SyntaxProblem[];
}

/** A name, a word or a text (without its quotes) and its place. */
export interface Word extends Span {
  readonly text: string;
}

/** Anything that may stand where a length does. */
export type Expression = Literal | NameUse | Sum | Product | Negation;

export interface Literal extends Span {
  readonly kind: "literal";
  /** null when it can't be read, which has been told. */
  readonly quantity: Quantity | null;
}

export interface NameUse extends Word {
  readonly kind: "name";
}

/** Flat, so that a line of any length is walked without recursion. */
export interface Sum extends Span {
  readonly kind: "sum";
  readonly first: Expression;
  readonly rest: readonly { readonly operator: "+" | "-"; readonly operand: Expression }[];
}

export interface Product extends Span {
  readonly kind: "product";
  readonly first: Expression;
  readonly rest: readonly { readonly operator: "*" | "/"; readonly operand: Expression }[];
}

export interface Negation extends Span {
  readonly kind: "negation";
  readonly operand: Expression;
}

/** What every statement has: its whole span, and the word to underline (its name, else its keyword). */
interface Stated<Kind extends string> extends Span {
  readonly kind: Kind;
  readonly head: Span;
}

/** A line that could not be understood, which has been told. */
export interface BrokenStatement extends Stated<"broken"> {
  /** The kind of statement that it would have been. */
  readonly meant: string;
}

interface Measured<Kind extends string> extends Stated<Kind> {
  readonly length: Expression;
}

interface Paired<Kind extends string> extends Stated<Kind> {
  readonly first: Expression;
  readonly second: Expression;
}

interface Block<Kind extends string, Body> extends Stated<Kind> {
  /** null when the heading has none that can be read, which has been told. */
  readonly name: Word | null;
  readonly body: readonly Body[];
}

export interface TitleStatement extends Stated<"plan"> {
  readonly title: Word;
}

export interface UnitsStatement extends Stated<"units"> {
  readonly unit: Word;
}

export type BedStatement = Measured<"bed">;

export interface LetStatement extends Stated<"let"> {
  readonly name: Word;
  readonly value: Expression;
}

export interface UseStatement extends Stated<"use"> {
  readonly path: Word;
}

export interface AllowStatement extends Stated<"allow"> {
  readonly code: Word;
  readonly reason: Word;
}

export interface TileStatement extends Block<"tile", TilePart> {
  readonly title: Word | null;
}

export type TilePart =
  | FaceStatement
  | Measured<"thickness">
  | Measured<"variation">
  | Measured<"warpage">
  | EdgesStatement
  | Measured<"box">
  | Stated<"directional">
  | LotStatement
  | PriceStatement
  | BreakageStatement
  | Measured<"spares">
  | AllowStatement
  | BrokenStatement;

export type FaceStatement = Paired<"face">;

export interface EdgesStatement extends Stated<"edges"> {
  readonly finish: "pressed" | "rectified";
}

export interface TrimStatement extends Block<"trim", TrimPart> {
  readonly title: Word | null;
}

export type TrimPart =
  | FaceStatement
  | Measured<"thickness">
  | LotStatement
  | PriceStatement
  | AllowStatement
  | BrokenStatement;

/** A number that is no length. */
export interface WrittenNumber extends Span {
  /** null when it can't be read, which has been told. */
  readonly number: Fraction | null;
  /** Without its sign. */
  readonly image: string;
}

/** A number and its unit, such as `50 lb`. */
export interface WrittenAmount extends WrittenNumber {
  /** Its unit as written, behind the number or part of it. */
  readonly unit: Word | null;
}

export interface LotStatement extends Stated<"lot"> {
  readonly lot: Word;
}

/** What may be bought at a price. */
export type PricedPer = "box" | "piece" | "bag" | "tube";

export interface PriceStatement extends Stated<"price"> {
  readonly price: WrittenNumber;
  readonly per: PricedPer;
}

export interface BreakageStatement extends Stated<"breakage"> {
  readonly percent: WrittenNumber;
}

/** `saw { ... }`; it has no name, as mortar, grout and sealant have none. */
export type SawStatement = Block<"saw", SawPart>;

export type SawPart = Measured<"kerf"> | Measured<"rip"> | BrokenStatement;

export interface MortarStatement extends Block<"mortar", MortarPart> {
  readonly title: Word | null;
}

export type MortarPart =
  Paired<"notch"> | BagStatement | Measured<"back-butter"> | PriceStatement | BrokenStatement;

export interface BagStatement extends Stated<"bag"> {
  readonly mass: WrittenAmount;
  /** The area that it covers; null where a bag is only weighed. */
  readonly covers: WrittenAmount | null;
}

export interface GroutStatement extends Block<"grout", GroutPart> {
  readonly title: Word | null;
}

export type GroutPart = DensityStatement | BagStatement | PriceStatement | BrokenStatement;

export interface DensityStatement extends Stated<"density"> {
  readonly density: WrittenNumber;
}

export interface SealantStatement extends Block<"sealant", SealantPart> {
  readonly title: Word | null;
}

export type SealantPart = TubeStatement | Measured<"depth"> | PriceStatement | BrokenStatement;

export interface TubeStatement extends Stated<"tube"> {
  readonly volume: WrittenAmount;
}

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
  | PreferStatement
  | AllowStatement
  | BrokenStatement;

export interface SizeStatement extends Paired<"size"> {
  /** The upper end of the range of heights that a wall's tile may stop at; null for one height. */
  readonly upTo: Expression | null;
}

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
}

export interface AtStatement extends Stated<"at"> {
  readonly x: Expression;
  readonly y: Expression | null;
  /** The upper ends of the ranges that the place is left free in; null where it is one place. */
  readonly xTo: Expression | null;
  readonly yTo: Expression | null;
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
  | Measured<"between">
  | SetStatement
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

/** `prefer { ... }`; it has no name. The first wish is the most wanted. */
export type PreferStatement = Block<"prefer", WishStatement | BrokenStatement>;

export type WrittenWish =
  | { readonly wanted: "courses-meet" | "bond-goes-on" | "equal-ends" | "few-cuts" }
  | { readonly wanted: "centre"; readonly opening: Word }
  | { readonly wanted: "no-cut"; readonly under: Expression }
  | { readonly wanted: "whole-courses"; readonly at: "bottom" | "top" }
  | { readonly wanted: "whole-courses"; readonly at: "sill" | "head"; readonly opening: Word };

export interface WishStatement extends Stated<"wish"> {
  readonly wish: WrittenWish;
}

/** `rules { ... }`; it has no name. */
export type RulesStatement = Block<"rules", LimitStatement | BrokenStatement>;

export interface LimitStatement extends Stated<"limit"> {
  readonly name: Word;
  readonly value: "off" | "on" | Expression;
}

export type PlanStatement =
  | TitleStatement
  | UnitsStatement
  | BedStatement
  | LetStatement
  | UseStatement
  | AllowStatement
  | TileStatement
  | TrimStatement
  | SawStatement
  | MortarStatement
  | GroutStatement
  | SealantStatement
  | WallStatement
  | PreferStatement
  | RulesStatement
  | BrokenStatement;

export type Statement =
  | PlanStatement
  | TilePart
  | TrimPart
  | SawPart
  | MortarPart
  | GroutPart
  | SealantPart
  | WallPart
  | OpeningPart
  | LayPart
  | WishStatement
  | LimitStatement;
