import { formatLength, type Nm } from "../../measure/index.js";
import type { Hole } from "../../model/index.js";
import { bandsOf, clearHeights, plateOvers } from "../../rules/index.js";
import type { SolvedWall } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import type { Fix, Fixer } from "./fix.js";
import { holePlaceEdits } from "./hole-place-edits.js";
import { isAtHead } from "./statement-at-head.js";

/** Moves a hole's middle off a band that it goes through, or its plate off what it runs over. */
export const moveHole: Fixer = (state, diagnostic) => {
  const { code, range } = diagnostic;
  if (code !== "band/cut-through" && code !== "hole/plate-over") return [];
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const hole = wall?.wall.holes.find(({ origin }) => isAtHead(origin, range));
  if (!wall || !hole) return [];
  const places = code === "hole/plate-over" ? offOthers(wall, hole) : offBands(state, wall, hole);
  return places.flatMap(({ at, words }): Fix[] => {
    const edits = holePlaceEdits(state, hole, at);
    const { units } = state.outcome.plan;
    const title = `Move ${hole.name} ${words}: ${formatLength(at.x, units)}, ${formatLength(at.y, units)}`;
    return edits ? [{ title, mends: diagnostic, preferred: false, edits }] : [];
  });
};

interface Offer {
  readonly at: Hole["at"];
  readonly words: string;
}

function offBands({ outcome }: DocumentState, wall: SolvedWall, hole: Hole): Offer[] {
  return bandsOf(wall).flatMap((band): Offer[] => {
    const round = band.lay.region.roundHoles.find((each) => each.hole === hole);
    if (!round) return [];
    const { under, over } = clearHeights(outcome.solved, band, round);
    const { name } = band.lay.lay;
    const below = { at: { x: hole.at.x, y: under }, words: `under band ${name}` };
    if (over === null) return [below];
    return [below, { at: { x: hole.at.x, y: over }, words: `over band ${name}` }];
  });
}

/** Off all of it at once: a corner takes it two ways. Things that stand on either side leave no place. */
function offOthers(wall: SolvedWall, hole: Hole): Offer[] {
  const overs = plateOvers(wall, hole);
  const way = (pick: (mend: { x: Nm; y: Nm }) => Nm): Nm | null => {
    const steps = overs.map(({ mend }) => pick(mend));
    const [most, least] = [Math.max(0, ...steps), Math.min(0, ...steps)];
    return most > 0 && least < 0 ? null : most + least;
  };
  const [x, y] = [way((mend) => mend.x), way((mend) => mend.y)];
  if (x === null || y === null) return [];
  const at = { x: hole.at.x + x, y: hole.at.y + y };
  if (plateOvers(wall, { ...hole, at }).length > 0) return [];
  return [{ at, words: "so that its plate lies on tile" }];
}
