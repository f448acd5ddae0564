import type { Syntax } from "../../language/index.js";
import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import type { Opening, SourceRange } from "../../model/index.js";
import { tilesWords } from "../../sheets/index.js";
import {
  layRound,
  type OpeningFit,
  openingFits,
  type SolvedLay,
  type SolvedWall,
} from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { statementFrom } from "../statement-from.js";
import { writeChoice } from "../write-choice.js";
import type { Fix, Fixer } from "./fix.js";

type Change = Omit<Fix, "mends">;

/** Moves a niche that is off the joints onto them, or sizes it to whole tiles. */
export const ontoJoints: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "opening/off-joint") return [];
  const { start } = diagnostic.range;
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const opening = wall?.wall.openings.find(
    ({ origin: { head } }) =>
      head.start.line === start.line && head.start.character === start.character,
  );
  if (!wall || !opening) return [];
  return changesOf(state, wall, opening).map((change) => ({ ...change, mends: diagnostic }));
};

/** The same for a window whose lines the stretch touches: no rule asks for it, but framing may still move. */
export function windowOntoJoints(state: DocumentState, range: SourceRange): Fix[] {
  return state.outcome.solved.walls.flatMap((wall) =>
    wall.wall.openings
      .filter(({ kind, origin }) => {
        const { start, end } = origin.range;
        const touches = start.line <= range.end.line && end.line >= range.start.line;
        return kind === "window" && origin.file === state.document.file && touches;
      })
      .flatMap((opening) => changesOf(state, wall, opening))
      .map((change) => ({ ...change, mends: null })),
  );
}

function changesOf(state: DocumentState, wall: SolvedWall, opening: Opening): Change[] {
  const lay = layRound(wall, opening);
  const fits = lay && openingFits(wall, lay, opening);
  if (!fits || fits.isOn) return [];
  const { moved, sized } = fits;
  const { units } = state.outcome.plan;
  const shown = (nm: Nm): string => formatLength(nm, units);
  const { name, size } = opening;
  const changes: Change[] = [];
  if (moved) {
    const title = `Move ${name} onto the joints: at ${shown(moved.at.x)}, ${shown(moved.at.y)}`;
    changes.push(...changeTo(state, lay, opening, moved, title));
  }
  // Moved, it may have whole joints round it without another size.
  if (sized && (sized.size.across !== size.across || sized.size.up !== size.up || !moved)) {
    const title = `Size ${name} to ${tilesWords(sized)}: ${shown(sized.size.across)} x ${shown(sized.size.up)}`;
    changes.push(...changeTo(state, lay, opening, sized, title));
  }
  return changes;
}

function changeTo(
  state: DocumentState,
  lay: SolvedLay,
  opening: Opening,
  fit: OpeningFit,
  title: string,
): Change[] {
  const block = statementFrom(state, opening.origin);
  const placed = block?.kind === "opening" ? placeEdits(state, block, opening, fit) : null;
  // What is left to the solver would be chosen anew for the new place, and the joints would move.
  const started = lay.choice ? writeChoice(state, lay) : [];
  if (!placed || !started) return [];
  const { beside, met } = fit.joints;
  const some =
    met.length < beside.length ? ` (upright in ${met.length} of ${beside.length} courses)` : "";
  const written = lay.choice ? ", and write the chosen start down" : "";
  return [{ title: `${title}${some}${written}`, preferred: false, edits: [...placed, ...started] }];
}

/** Only what changes is written anew, so that a named length stays one. */
function placeEdits(
  state: DocumentState,
  { body }: Syntax.OpeningStatement,
  { at, size }: Opening,
  fit: OpeningFit,
): TextEdit[] | null {
  const atPart = body.find((part) => part.kind === "at");
  const sizePart = body.find((part) => part.kind === "size");
  if (!atPart?.y || !sizePart || body.some(({ kind }) => kind === "broken")) return null;
  const wanted: readonly (readonly [Syntax.Expression, Nm, Nm])[] = [
    [atPart.x, at.x, fit.at.x],
    [atPart.y, at.y, fit.at.y],
    [sizePart.first, size.across, fit.size.across],
    [sizePart.second, size.up, fit.size.up],
  ];
  const { units } = state.outcome.plan;
  return wanted
    .filter(([, before, after]) => before !== after)
    .map(([written, , after]) => ({
      range: state.tree.lines.range(written),
      text: exactLength(after, units),
    }));
}
