import assert from "node:assert/strict";
import { parse, resolve } from "../../src/language/index.js";
import { solve } from "../../src/solver/index.js";
import { takeoff, type Takeoff } from "../../src/takeoff/index.js";
import { printSketch } from "./print-sketch.js";
import type { Sketch } from "./sketch.js";
import { ALONE, type SolvedText } from "./solve-text.js";

export interface TakenText extends SolvedText {
  readonly taken: Takeoff;
}

/** Reads, solves and takes off a plan that must have no error in it. */
export function takeText(text: string): TakenText {
  const { plan, diagnostics } = resolve(parse(text), ALONE);
  const errors = diagnostics.filter(({ severity }) => severity === "error");
  assert.deepEqual(errors, [], text);
  const solved = solve(plan);
  return { plan, solved, diagnostics, taken: takeoff(solved) };
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
