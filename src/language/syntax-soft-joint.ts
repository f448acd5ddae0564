import type { Expression, Literal, Measured, Stated } from "./syntax-statement.js";

/** `movement joint at 120`, `movement joint over course 12`: a joint of the tile that is soft. */
export interface SoftJointStatement extends Stated<"soft-joint"> {
  readonly joint:
    | { readonly kind: "head"; readonly at: Expression }
    | { readonly kind: "bed"; readonly over: Literal };
}

/** `between 1/4`, `between movement 1/4`: the joint to the lays beside one. */
export interface BetweenStatement extends Measured<"between"> {
  readonly soft: boolean;
}
