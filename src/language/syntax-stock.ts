import type {
  AllowStatement,
  Block,
  BrokenStatement,
  FaceStatement,
  Measured,
  Paired,
  Stated,
  Word,
  WrittenAmount,
  WrittenNumber,
} from "./syntax-statement.js";

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
