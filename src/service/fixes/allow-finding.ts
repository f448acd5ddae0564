import { RULES } from "../../rules/index.js";
import { insertInBlock } from "../insert-in-block.js";
import { statementsAt } from "../walk-tree.js";
import type { Fixer } from "./fix.js";

/** Silences a rule in the block concerned; the reason is for the person to write. */
export const allowFinding: Fixer = (state, diagnostic) => {
  const { code, range, allowed } = diagnostic;
  const isRule = RULES.some((rule) => rule.code === code) && !code.startsWith("allow/");
  if (!isRule || allowed !== undefined) return [];
  const holding = statementsAt(state.tree, state.tree.lines.offset(range.start));
  const block = holding.filter((statement) => "body" in statement).at(-1);
  const edit = block && insertInBlock(state, block, [`allow ${code} "say why here"`]);
  if (!edit) return [];
  return [{ title: `Allow ${code} here`, mends: diagnostic, preferred: false, edits: [edit] }];
};
