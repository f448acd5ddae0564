import { dropStatement } from "./drop-statement.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/** Takes an `allow` away that silences nothing: no finding, or no rule that there is. */
export const dropAllow: Fixer = (state, diagnostic) => {
  const { code } = diagnostic;
  if (code !== "allow/unused" && code !== "allow/unknown") return [];
  const statement = statementAtHead(state, diagnostic.range);
  if (statement?.kind !== "allow") return [];
  const edits = [dropStatement(state, statement)];
  const preferred = code === "allow/unused";
  return [{ title: "Take this allow away", mends: diagnostic, preferred, edits }];
};
