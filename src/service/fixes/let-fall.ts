import { isSolid } from "../../model/index.js";
import { exactLength, formatLength } from "../../measure/index.js";
import { fallRatio, leastFall } from "../../rules/index.js";
import { insertInBlock } from "../insert-in-block.js";
import type { Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** Lets a sill, or a bench's or a curb's top, fall towards the room by the least that drains. */
export const letFall: Fixer = (state, diagnostic) => {
  const { code, range, wall: name } = diagnostic;
  if (code !== "opening/flat-sill" && code !== "opening/back-slope") return [];
  const { plan } = state.outcome;
  const wall = plan.walls.find((each) => each.name === name);
  const opening = wall?.openings.find(({ origin }) => isAtHead(origin, range));
  const statement = statementAtHead(state, range);
  if (!opening?.inside || statement?.kind !== "opening") return [];
  const least = leastFall(opening.inside.depth, fallRatio(plan.limits), plan.units);
  // A limit of the plan's own may ask for more than there is room for.
  if (least >= opening.size.up) return [];
  const fall = statement.body.find((part) => part.kind === "fall");
  const text = exactLength(least, plan.units);
  const edit = fall
    ? { range: state.tree.lines.range(fall.length), text }
    : insertInBlock(state, statement, [`fall ${text}`]);
  if (!edit) return [];
  const title = `Let the ${isSolid(opening) ? "top" : "sill"} fall ${formatLength(least, plan.units)} towards the room`;
  return [{ title, mends: diagnostic, preferred: true, edits: [edit] }];
};
