import type { Fraction, Quantity } from "../measure/index.js";
import type { Span } from "./line-table.js";

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
export interface Stated<Kind extends string> extends Span {
  readonly kind: Kind;
  readonly head: Span;
}

/** A line that could not be understood, which has been told. */
export interface BrokenStatement extends Stated<"broken"> {
  /** The kind of statement that it would have been. */
  readonly meant: string;
}

/** A statement of one length. */
export interface Measured<Kind extends string> extends Stated<Kind> {
  readonly length: Expression;
}

/** A statement of two lengths: 24 x 36. */
export interface Paired<Kind extends string> extends Stated<Kind> {
  readonly first: Expression;
  readonly second: Expression;
}

/** A statement that holds others, in braces. */
export interface Block<Kind extends string, Body> extends Stated<Kind> {
  /** null when the heading has none that can be read, which has been told. */
  readonly name: Word | null;
  readonly body: readonly Body[];
}

export interface AllowStatement extends Stated<"allow"> {
  readonly code: Word;
  readonly reason: Word;
}

export type FaceStatement = Paired<"face">;

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

export interface SizeStatement extends Paired<"size"> {
  /** The upper end of the range of heights that a wall's tile may stop at; null for one height. */
  readonly upTo: Expression | null;
}

export interface AtStatement extends Stated<"at"> {
  readonly x: Expression;
  readonly y: Expression | null;
  /** The upper ends of the ranges that the place is left free in; null where it is one place. */
  readonly xTo: Expression | null;
  readonly yTo: Expression | null;
}
