import type { LineTable } from "./line-table.js";
import type { LayPart } from "./syntax-lay.js";
import type { SyntaxProblem } from "./syntax-problem.js";
import type {
  AllowStatement,
  Block,
  BrokenStatement,
  Expression,
  Measured,
  Stated,
  Word,
} from "./syntax-statement.js";
import type {
  GroutPart,
  GroutStatement,
  MortarPart,
  MortarStatement,
  SawPart,
  SawStatement,
  SealantPart,
  SealantStatement,
  TilePart,
  TileStatement,
  TrimPart,
  TrimStatement,
} from "./syntax-stock.js";
import type { OpeningPart, WallPart, WallStatement } from "./syntax-wall.js";
import type { PreferStatement, WishStatement } from "./syntax-wishes.js";

export type * from "./syntax-lay.js";
export type * from "./syntax-soft-joint.js";
export type * from "./syntax-statement.js";
export type * from "./syntax-stock.js";
export type * from "./syntax-wall.js";
export type * from "./syntax-wishes.js";

/** A text as it is written: statements with the place of every part, no name looked up yet. */
export interface SyntaxTree {
  readonly text: string;
  readonly lines: LineTable;
  readonly statements: readonly PlanStatement[];
  readonly problems: readonly SyntaxProblem[];
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
