export type { Resolved, Source } from "./source.js";
export type { SyntaxTree } from "./syntax.js";
export type { SyntaxCode } from "./syntax-problem.js";
export type { PlanCode } from "./resolve/plan-code.js";
export { didYouMean, nearest } from "./nearest.js";
export { parse } from "./parse.js";
export { resolve } from "./resolve.js";
