import type { SolvedLay } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { insertInBlock } from "../insert-in-block.js";
import { statementFrom } from "../statement-from.js";

/** States a start in a lay's block, in place of the one there; null where the block isn't to be found. */
export function stateStart(
  state: DocumentState,
  { lay }: SolvedLay,
  direction: "across" | "up",
  text: string,
): TextEdit | null {
  const block = statementFrom(state, lay.origin);
  if (block?.kind !== "lay") return null;
  const statement = block.body.find(({ kind }) => kind === direction);
  if (statement) return { range: state.tree.lines.range(statement), text };
  // It may be the start that can't be understood.
  if (block.body.some(({ kind }) => kind === "broken")) return null;
  return insertInBlock(state, block, [text]);
}
