import { insertInBlock } from "../insert-in-block.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

const WANTED = /wanted `([^`]+)` there$/;

/** Says of the other wall at a corner what it meets. */
export const answerCorner: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "plan/corner-unanswered") return [];
  const wanted = WANTED.exec(diagnostic.message)?.[1];
  const [other] = diagnostic.related ?? [];
  if (wanted === undefined || other?.file !== state.document.file) return [];
  const wall = statementAtHead(state, other.range);
  const edit = wall && insertInBlock(state, wall, [wanted]);
  if (!edit) return [];
  const title = `Add \`${wanted}\` to the other wall`;
  return [{ title, mends: diagnostic, preferred: true, edits: [edit] }];
};
