import { parse } from "../../src/language/index.js";
import type { Syntax } from "../../src/language/index.js";

type Plain = Record<string, unknown>;

/** A statement of the tree with words, numbers and expressions as their text. */
function plain(value: unknown, text: string): unknown {
  if (Array.isArray(value)) return value.map((part) => plain(part, text));
  if (typeof value !== "object" || value === null) return value;
  const { start, end, kind, head: _, ...rest } = value as Plain & Syntax.Word;
  if ("text" in rest || "quantity" in rest || "image" in rest) return text.slice(start, end);
  return {
    ...(kind === undefined ? {} : { kind }),
    ...Object.fromEntries(Object.entries(rest).map(([key, part]) => [key, plain(part, text)])),
  };
}

/** The statement of a text that the path leads to, from block to block, as `plain` has it. */
export function plainStatement(text: string, ...path: number[]): unknown {
  let [found]: readonly Syntax.Statement[] = parse(text).statements.slice(path[0]);
  for (const i of path.slice(1)) found = (found as Syntax.WallStatement).body[i];
  return plain(found, text);
}
