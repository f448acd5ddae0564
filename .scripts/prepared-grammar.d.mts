import type { Plugin } from "esbuild";

/** Has a bundle hold the first tokens of the grammar's ways. */
export declare const preparedGrammar: Plugin;
