import type { Span } from "../line-table.js";
import type { WallDraft } from "./wall-draft.js";

/** More openings or holes than this are no wall, and comparing each with each takes time. */
const MOST = 500;

/** The first five hundred; that there are more is told at the first of those left out. */
export function withinCount<Statement extends { readonly head: Span }>(
  statements: readonly Statement[],
  what: "openings" | "holes",
  { scope, name: wall }: WallDraft,
): readonly Statement[] {
  const beyond = statements[MOST];
  if (!beyond) return statements;
  const message = `found ${statements.length} ${what} in a wall, wanted at most ${MOST}; the others are left out`;
  scope.report.tell("plan/too-many", beyond.head, message, { wall });
  return statements.slice(0, MOST);
}
