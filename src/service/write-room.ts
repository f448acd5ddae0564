import type { Syntax } from "../language/index.js";
import { exactLength } from "../measure/index.js";
import type { Wall } from "../model/index.js";
import { type SolvedLay, type SolvedPlan, type SolvedWall, startedLays } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";
import { ownStart } from "./own-start.js";
import { statementFrom } from "./statement-from.js";
import { writeJoint, writeOption } from "./write-option.js";

/**
 * Writes a layout of the whole room into the text as one edit: every wall's start and joint, and in place
 * of each range the place that was taken. null where a block isn't to be found, or isn't understood.
 */
export function writeRoom(state: DocumentState, { walls }: SolvedPlan): TextEdit[] | null {
  const edits: TextEdit[] = [];
  for (const solved of walls) {
    const places = placeEdits(state, solved.wall);
    if (!places) return null;
    edits.push(...places);
    const started = startedLays(solved);
    const lays = [
      ...started.map((laid) => writeOption(state, laid, ownStart(solved, laid))),
      ...joinedLays(solved, started).map((laid) => writeJoint(state, laid)),
    ];
    for (const own of lays) {
      if (!own) return null;
      edits.push(...own);
    }
  }
  return edits;
}

/** What is over set courses of its block: it starts as they do, but its joint may have been left open. One of each block. */
function joinedLays({ lays }: SolvedWall, started: readonly SolvedLay[]): SolvedLay[] {
  const isOpen = ({ lay: { joint } }: SolvedLay) => joint.min < joint.max;
  const isOf = (laid: SolvedLay) => (other: SolvedLay) => other.lay.origin === laid.lay.origin;
  const open = lays.filter((laid) => isOpen(laid) && !started.some(isOf(laid)));
  return open.filter((laid, i) => open.findIndex(isOf(laid)) === i);
}

/** In place of each range of a wall the place that was taken. */
function placeEdits(state: DocumentState, wall: Wall): TextEdit[] | null {
  const block = statementFrom(state, wall.origin);
  if (block?.kind !== "wall") return null;
  const { units } = state.outcome.plan;
  const write = (from: Syntax.Expression, to: Syntax.Expression | null, nm: number): TextEdit[] =>
    to
      ? [
          {
            range: state.tree.lines.range({ start: from.start, end: to.end }),
            text: exactLength(nm, units),
          },
        ]
      : [];
  const size = block.body.find((part) => part.kind === "size");
  const edits = size && wall.stop ? write(size.second, size.upTo, wall.size.up) : [];
  for (const { origin, at, free } of wall.openings) {
    if (!free.x && !free.y) continue;
    const opening = statementFrom(state, origin);
    const stated = opening?.kind === "opening" && opening.body.find((part) => part.kind === "at");
    if (!stated) return null;
    edits.push(...write(stated.x, stated.xTo, at.x));
    if (stated.y) edits.push(...write(stated.y, stated.yTo, at.y));
  }
  return edits;
}
