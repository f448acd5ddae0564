import type { Syntax } from "../../language/index.js";
import { exactLength } from "../../measure/index.js";
import type { SolvedLay } from "../../solver/index.js";
import { acrossWords, upWords } from "../../sheets/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { startWords } from "../hints.js";
import { insertInBlock } from "../insert-in-block.js";
import { statementFrom } from "../statement-from.js";
import { statementsOf } from "../walk-tree.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/**
 * Writes down how courses start that are said to be set, as the plan has them now: what is on the wall isn't
 * the solver's to choose. A range of joints stays for the rest, and what was chosen of it stands with what is set.
 */
export const writeSetStart: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "plan/set-open") return [];
  const statement = statementAtHead(state, diagnostic.range);
  const lay = statement?.kind === "set" ? layOf(state, statement) : null;
  const edits = lay ? editsFor(state, lay) : null;
  if (!lay || !edits) return [];
  const start = startWords(lay, lay.choice!.left, state.outcome.plan.units);
  const title = `Write down how these courses were set: ${start}`;
  return [{ title, mends: diagnostic, preferred: true, edits }];
};

/** The lay that the statement stands in, or the one lay of its wall. */
function layOf(state: DocumentState, statement: Syntax.SetStatement): SolvedLay | null {
  const { statements } = state.tree;
  const placed = [...statementsOf(statements)].find((each) => each.statement === statement);
  const block = placed?.blocks.at(-1);
  if (block?.kind !== "lay" && block?.kind !== "wall") return null;
  const written = block.kind === "lay" ? block : block.body.find((part) => part.kind === "lay");
  return (
    state.outcome.solved.walls
      .flatMap(({ lays }) => lays)
      .find(({ lay, choice }) => choice && statementFrom(state, lay.origin) === written) ?? null
  );
}

function editsFor(state: DocumentState, solved: SolvedLay): TextEdit[] | null {
  const block = statementFrom(state, solved.lay.origin);
  if (block?.kind !== "lay" || block.body.some(({ kind }) => kind === "broken")) return null;
  const { left } = solved.choice!;
  const { units } = state.outcome.plan;
  const missing = [
    ...(left.includes("across") ? [acrossWords(solved.across, units)] : []),
    ...(left.includes("up") ? [upWords(solved.up, units)] : []),
  ];
  const edits = left.includes("joint")
    ? setStatements(state, block).map((set) =>
        jointEdit(state, set, exactLength(solved.joint, units)),
      )
    : [];
  if (missing.length === 0) return edits;
  const insert = insertInBlock(state, block, missing);
  return insert && [...edits, insert];
}

/** What is said to be set of a lay without the joint that it was set with. */
function setStatements(
  { tree }: DocumentState,
  lay: Syntax.LayStatement,
): readonly Syntax.SetStatement[] {
  return [...statementsOf(tree.statements)].flatMap(({ statement, blocks }) => {
    const block = blocks.at(-1);
    const isOf = block === lay || (block?.kind === "wall" && block.body.includes(lay));
    return statement.kind === "set" && isOf && !statement.joint ? [statement] : [];
  });
}

function jointEdit(
  { tree }: DocumentState,
  { last }: Syntax.SetStatement,
  joint: string,
): TextEdit {
  return { range: tree.lines.range({ start: last.end, end: last.end }), text: ` joint ${joint}` };
}
