import type { Syntax } from "../../language/index.js";
import type { SourceRange } from "../../model/index.js";
import { lossWords, wishWords } from "../../rules/index.js";
import {
  measureRoom,
  type SolvedPlan,
  type WishOutcome,
  wishOutcomes,
} from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { statementsAt } from "../walk-tree.js";
import { writeRoom } from "../write-room.js";
import type { Fix } from "./fix.js";

/** Other ways to lay the room, for a stretch among its wishes; and to write down the one that it has. */
export function takeRoomOption(state: DocumentState, range: SourceRange): Fix[] {
  const { solved } = state.outcome;
  if (!solved.room || !isAmongWishes(state, range)) return [];
  const { asked } = solved.room;
  const own = measureRoom(solved.plan, solved.walls, asked.wishes);
  const { units } = asked;
  return [
    ...fixOf(state, "Write the room's layout down: starts, joint and places", solved),
    ...offered(wishOutcomes(solved)).flatMap(({ wish, layout }) => {
      const loss = lossWords(layout, own, asked.wishes, units);
      const title = `Lay the room with \`${wishWords(wish, units)}\` first: it costs ${loss}`;
      return fixOf(state, title, layout.solved);
    }),
  ];
}

function offered(outcomes: readonly WishOutcome[]) {
  return outcomes.flatMap(({ wish, nearest }) => (nearest ? [{ wish, layout: nearest }] : []));
}

function fixOf(state: DocumentState, title: string, solved: SolvedPlan): Fix[] {
  const edits = writeRoom(state, solved);
  return edits && edits.length > 0 ? [{ title, mends: null, preferred: false, edits }] : [];
}

function isAmongWishes({ tree }: DocumentState, { start }: SourceRange): boolean {
  const path: readonly Syntax.Statement[] = statementsAt(tree, tree.lines.offset(start));
  return path.some(({ kind }) => kind === "prefer");
}
