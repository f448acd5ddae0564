import type { Syntax } from "../language/index.js";
import { exactLength } from "../measure/index.js";
import { acrossWords, upWords } from "../sheets/index.js";
import type { SolvedLay } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";
import { insertInBlock } from "./insert-in-block.js";
import { statementFrom } from "./statement-from.js";

/**
 * Writes what the solver chose into the lay's block, exact to the nanometre: solved again, the text
 * gives the same layout. null where the block isn't to be found.
 */
export function writeChoice(state: DocumentState, solved: SolvedLay): TextEdit[] | null {
  const { choice, lay } = solved;
  const block = statementFrom(state, lay.origin);
  if (!choice || block?.kind !== "lay") return null;
  const { units } = state.outcome.plan;
  const written: string[] = [];
  if (choice.left.includes("across")) written.push(acrossWords(solved.across, units));
  if (choice.left.includes("up")) written.push(upWords(solved.up, units));
  // A start that is stated but can't be understood stands in the way of the one that was chosen.
  const isStated = (kind: string): boolean => block.body.some((part) => part.kind === kind);
  if (choice.left.some((part) => part !== "joint" && isStated(part))) return null;
  if (isStated("broken")) return null;
  const edits: TextEdit[] = [];
  if (choice.left.includes("joint")) {
    const joint = block.body.find((part): part is Syntax.JointStatement => part.kind === "joint");
    if (!joint?.max) return null;
    const text = exactLength(solved.joint, units);
    edits.push({
      range: state.tree.lines.range({ start: joint.min.start, end: joint.max.end }),
      text,
    });
  }
  if (written.length > 0) {
    const insert = insertInBlock(state, block, written);
    if (!insert) return null;
    edits.push(insert);
  }
  return edits;
}
