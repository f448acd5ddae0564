import type { Plugin } from "esbuild";

/** Has a bundle read its first text sooner. */
export declare const leanGrammar: Plugin;
