import { acrossWords } from "../../sheets/index.js";
import type { Fix, Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";
import { stateStart } from "./state-start.js";

/** Centres the lay on an opening that nearly stands on the line it is centred on. */
export const centreOnOpening: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "opening/off-centre") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const statement = statementAtHead(state, diagnostic.range);
  if (!wall || statement?.kind !== "opening") return [];
  const opening = wall.wall.openings.find(({ name }) => name === statement.name?.text);
  if (!opening) return [];
  return wall.lays.flatMap((lay): Fix[] => {
    if (!("centre" in lay.across)) return [];
    const start = { kind: lay.across.kind, centre: { on: "opening", opening } } as const;
    const text = acrossWords(start, plan.units);
    const edit = stateStart(state, lay, "across", text);
    const title = `Centre the lay on ${opening.name}: ${text}`;
    return edit ? [{ title, mends: diagnostic, preferred: false, edits: [edit] }] : [];
  });
};
