import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { bandOff, type BandPair, bandPairs } from "../../rules/index.js";
import { upWords } from "../../sheets/index.js";
import { moduleUp, type SolvedLay } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { statementFrom } from "../statement-from.js";
import type { Fixer } from "./fix.js";
import { isAtHead } from "./statement-at-head.js";
import { stateStart } from "./state-start.js";

/** Moves a band to the height of the one on the next wall, with the courses that it stands on. */
export const meetBands: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "band/height") return [];
  const { solved, plan } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  if (!wall) return [];
  return bandPairs(wall, solved)
    .filter(({ corner }) => isAtHead(corner.edge.origin, diagnostic.range))
    .flatMap((pair) => {
      const { bottom, top } = bandOff(pair);
      if (bottom === 0 || bottom !== top) return [];
      const edit = movedBy(state, wall.lays, pair, -bottom);
      if (!edit) return [];
      const { name } = pair.band.lay.lay;
      const way = bottom > 0 ? "down" : "up";
      const title = `Move band ${name} ${formatLength(Math.abs(bottom), plan.units)} ${way}, to that of ${pair.corner.other.wall.name}`;
      return [{ title, mends: diagnostic, preferred: false, edits: [edit] }];
    });
};

/**
 * What a band's height hangs from: a line that it, or a lay under it, begins or ends at; else the start of
 * the lay that all of them stand on. null where another height would give that one more or fewer courses.
 */
function movedBy(
  state: DocumentState,
  lays: readonly SolvedLay[],
  { band }: BandPair,
  by: Nm,
): TextEdit | null {
  const own = placeOf(band.lay, "bottom");
  if (own !== null) return coversEdit(state, band.lay, "top", own + by);
  for (let lay = layUnder(band.lay, lays); lay; lay = layUnder(lay, lays)) {
    const end = placeOf(lay, "top");
    if (end !== null) return coversEdit(state, lay, "bottom", end + by);
    if (!layUnder(lay, lays)) return startEdit(state, lay, by);
  }
  return null;
}

function placeOf({ lay }: SolvedLay, side: Side): Nm | null {
  const bound = lay.area?.bounds[side];
  return bound?.kind === "place" ? bound.at : null;
}

function layUnder({ lay }: SolvedLay, lays: readonly SolvedLay[]): SolvedLay | undefined {
  const bound = lay.area?.bounds.bottom;
  return bound?.kind === "lay" ? lays.find((each) => each.lay.name === bound.lay) : undefined;
}

function coversEdit(state: DocumentState, { lay }: SolvedLay, from: Side, at: Nm): TextEdit | null {
  const block = statementFrom(state, lay.origin);
  if (block?.kind !== "lay") return null;
  const covers = block.body.find((part) => part.kind === "covers" && part.from === from);
  if (covers?.kind !== "covers") return null;
  const { units } = state.outcome.plan;
  return { range: state.tree.lines.range(covers.to), text: exactLength(at, units) };
}

/** Another start of the lowest lay, if it has as many courses with it. */
function startEdit(state: DocumentState, lay: SolvedLay, by: Nm): TextEdit | null {
  const { lattice, joint, region, courses } = lay;
  const [lowest] = courses;
  if (lay.lay.area?.courses === null || !lowest) return null;
  const module = moduleUp(lattice);
  const isStillLowest =
    lowest.top + by > region.bounds.bottom && lowest.top + by - module <= region.bounds.bottom;
  if (!isStillLowest) return null;
  const bed = lattice.y + by + module - joint + Math.floor(joint / 2);
  const text = upWords({ kind: "joint", y: bed }, state.outcome.plan.units);
  return stateStart(state, lay, "up", text);
}
