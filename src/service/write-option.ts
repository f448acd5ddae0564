import type { Syntax } from "../language/index.js";
import { exactLength } from "../measure/index.js";
import { acrossWords, upWords } from "../sheets/index.js";
import type { SolvedLay } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";
import { insertInBlock } from "./insert-in-block.js";
import type { WrittenStart } from "./own-start.js";
import { statementFrom } from "./statement-from.js";

/**
 * Writes another start into a lay's block, exact to the nanometre, in place of what is there; what
 * stays the same keeps its words. null where the block isn't to be found, or isn't understood.
 */
export function writeOption(
  state: DocumentState,
  { lay }: SolvedLay,
  option: WrittenStart,
): TextEdit[] | null {
  const block = statementFrom(state, lay.origin);
  if (block?.kind !== "lay" || block.body.some(({ kind }) => kind === "broken")) return null;
  const { units } = state.outcome.plan;
  const edits = jointEdits(state, block, exactLength(option.joint, units));
  const missing: string[] = [];
  for (const [kind, wanted, had] of [
    [
      "across",
      option.across && acrossWords(option.across, units),
      lay.across && acrossWords(lay.across, units),
    ],
    ["up", upWords(option.up, units), lay.up && upWords(lay.up, units)],
  ] as const) {
    if (wanted === null || wanted === had) continue;
    const statement = block.body.find((part) => part.kind === kind);
    if (statement) edits.push({ range: state.tree.lines.range(statement), text: wanted });
    else missing.push(wanted);
  }
  if (missing.length === 0) return edits;
  const insert = insertInBlock(state, block, missing);
  return insert && [...edits, insert];
}

/** Writes the joint that a lay got into its block, in place of a range. null where the block isn't to be found, or isn't understood. */
export function writeJoint(state: DocumentState, { lay, joint }: SolvedLay): TextEdit[] | null {
  const block = statementFrom(state, lay.origin);
  if (block?.kind !== "lay" || block.body.some(({ kind }) => kind === "broken")) return null;
  return jointEdits(state, block, exactLength(joint, state.outcome.plan.units));
}

/** A range gives way to the option's joint; one joint stays as it is written. */
function jointEdits(state: DocumentState, { body }: Syntax.LayStatement, text: string): TextEdit[] {
  const joint = body.find((part): part is Syntax.JointStatement => part.kind === "joint");
  if (!joint?.max) return [];
  const range = state.tree.lines.range({ start: joint.min.start, end: joint.max.end });
  return [{ range, text }];
}
