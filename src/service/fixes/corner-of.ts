import type { Diagnostic, SourceRange } from "../../model/index.js";
import { type Corner, cornersOver } from "../../rules/index.js";
import type { DocumentState } from "../document-state.js";

/** The corner that a diagnostic speaks of. */
export function cornerOf(state: DocumentState, { wall, range }: Diagnostic): Corner | null {
  const { solved } = state.outcome;
  const own = solved.walls.find((each) => each.wall.name === wall);
  const corners = own ? cornersOver(own, solved) : [];
  return corners.find(({ edge }) => isSame(edge.origin.head, range)) ?? null;
}

function isSame(a: SourceRange, b: SourceRange): boolean {
  return a.start.line === b.start.line && a.start.character === b.start.character;
}
