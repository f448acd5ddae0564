import { takeoff, type Takeoff } from "../../src/takeoff/index.js";
import { printSketch } from "./print-sketch.js";
import type { Sketch } from "./sketch.js";
import { solveClean, type SolvedText } from "./solve-text.js";

export interface TakenText extends SolvedText {
  readonly taken: Takeoff;
}

/** Reads, solves and takes off a plan that must have no error in it. */
export function takeText(text: string): TakenText {
  const answer = solveClean(text);
  return { ...answer, taken: takeoff(answer.solved) };
}

/** A sketch's text with stock facts: statements of its tile, and of the plan. */
export function stockedText(
  sketch: Sketch,
  stock: { readonly tile?: readonly string[]; readonly plan?: readonly string[] },
): string {
  const tile = (stock.tile ?? []).map((line) => `  ${line}\n`).join("");
  const plan = (stock.plan ?? []).map((line) => `${line}\n`).join("");
  return printSketch(sketch, "mm").replace("tile field {\n", `${plan}tile field {\n${tile}`);
}
