import type { Block, BrokenStatement, Expression, Stated, Word } from "./syntax-statement.js";

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
