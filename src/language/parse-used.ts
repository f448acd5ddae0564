import { parse } from "./parse.js";
import type { SyntaxTree } from "./syntax.js";

/** So many trees are kept, of texts up to so many characters: a few lists of stock. */
const MOST_KEPT = 16;
const LONGEST_KEPT = 100_000;

const kept = new Map<string, SyntaxTree>();

/**
 * Reads the text of a used file. Many plans use one list of stock, and a plan reads it anew at each
 * keystroke: the trees of the texts that came last are kept. Trees are never changed.
 */
export function parseUsed(text: string): SyntaxTree {
  const known = kept.get(text);
  if (known) return known;
  const tree = parse(text);
  if (text.length > LONGEST_KEPT) return tree;
  const [oldest] = kept.keys();
  if (kept.size >= MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  kept.set(text, tree);
  return tree;
}
