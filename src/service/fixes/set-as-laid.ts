import { dropStatement } from "./drop-statement.js";
import type { Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** Lets what is said to be set end with the last course that there is. */
export const setAsLaid: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "set/no-course") return [];
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const laid = wall?.lays.find(({ lay: { set } }) => set && isAtHead(set.origin, diagnostic.range));
  const statement = statementAtHead(state, diagnostic.range);
  if (!laid?.lay.set || statement?.kind !== "set") return [];
  const [first, last] = [statement.first, statement.last].map((each) =>
    Number(state.tree.text.slice(each.start, each.end)),
  );
  // A statement's courses are counted through its block, a lay's by themselves.
  const there = last! - (laid.lay.set.to - laid.courses.length);
  const fix = { mends: diagnostic, preferred: false };
  if (there < first!) {
    return [{ ...fix, title: "Take this line away", edits: [dropStatement(state, statement)] }];
  }
  const title = `Say that courses ${first!} to ${there} are set`;
  const range = state.tree.lines.range(statement.last);
  return [{ ...fix, title, edits: [{ range, text: String(there) }] }];
};
