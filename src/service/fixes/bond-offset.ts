import type { Syntax } from "../../language/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";

/** An offset of a running bond, as a part of its module. */
export interface Offset {
  readonly p: number;
  readonly q: number;
}

/** `1/3`, as a plan says it. */
export function offsetText({ p, q }: Offset): string {
  return `${p}/${q}`;
}

/**
 * Lays what a lay or a lining states at another offset; null where its bond isn't written there and can't be written for
 * it alone: `inside` speaks of the sides too, which are stacked.
 */
export function offsetEdit(
  { tree: { lines } }: DocumentState,
  statement: Syntax.Statement | null,
  offset: Offset,
): TextEdit | null {
  const text = offsetText(offset);
  if (statement?.kind === "lay") {
    const written = statement.body.find((part) => part.kind === "bond")?.offset;
    return written ? { range: lines.range(written), text } : null;
  }
  if (statement?.kind !== "lining") return null;
  const { bond, of, tile } = statement;
  if (bond) return bond.offset && { range: lines.range(bond.offset), text };
  if (of === "inside") return null;
  const end = lines.position(tile.end);
  return { range: { start: end, end }, text: ` running ${text}` };
}
