import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import type { Opening, Side } from "../../model/index.js";
import { overreaches, stepsUnder } from "../../rules/index.js";
import { frameOuter, openingBox, overlaps, type SolvedWall } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { statementFrom } from "../statement-from.js";
import type { Fix, Fixer } from "./fix.js";
import { isAtHead } from "./statement-at-head.js";

/** Moves a door off a step of the floor, or an opening whose frame reaches past the wall's end back into the tile. */
export const moveOpening: Fixer = (state, diagnostic) => {
  const { code, range } = diagnostic;
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  if (!wall) return [];
  const moves = wall.wall.openings.flatMap((opening): Move[] => {
    if (code === "opening/over-step" && isAtHead(opening.origin, range)) {
      return offSteps(wall, opening);
    }
    const isFrame = opening.frame !== null && isAtHead(opening.frame.origin, range);
    return code === "trim/past-end" && isFrame ? intoTile(wall, opening) : [];
  });
  return moves
    .filter((move) => isFree(wall, move))
    .flatMap(({ opening, across, up }): Fix[] => {
      const edits = placeEdits(state, opening, across, up);
      if (!edits) return [];
      const { units } = state.outcome.plan;
      const shown = (nm: Nm) => formatLength(Math.abs(nm), units);
      const ways = [
        ...(across === 0 ? [] : [`${shown(across)} ${across > 0 ? "right" : "left"}`]),
        ...(up === 0 ? [] : [`${shown(up)} ${up > 0 ? "up" : "down"}`]),
      ];
      const title = `Move ${opening.name} ${ways.join(" and ")}`;
      return [{ title, mends: diagnostic, preferred: false, edits }];
    });
};

interface Move {
  readonly opening: Opening;
  readonly across: Nm;
  readonly up: Nm;
}

/** To either side of all steps that it stands across. */
function offSteps(wall: SolvedWall, opening: Opening): Move[] {
  const places = stepsUnder(wall, opening).map(({ at }) => at);
  if (places.length === 0) return [];
  const { left, right } = frameOuter(opening) ?? openingBox(opening);
  return [Math.min(...places) - right, Math.max(...places) - left].map((across) => ({
    opening,
    across,
    up: 0,
  }));
}

/** As far in as its frame reaches out, on one side of each direction. */
function intoTile(wall: SolvedWall, opening: Opening): Move[] {
  const over = overreaches(wall, opening);
  const by = (side: Side): Nm =>
    Math.max(0, ...over.filter((each) => each.side === side).map((each) => each.by));
  const isWedged =
    (by("left") > 0 && by("right") > 0) || (by("bottom") > 0 && by("top") > 0) || over.length === 0;
  return isWedged
    ? []
    : [{ opening, across: by("left") - by("right"), up: by("bottom") - by("top") }];
}

/** Whether an opening stands clear there: its frame within the tile, and over no other opening. */
function isFree(wall: SolvedWall, { opening, across, up }: Move): boolean {
  const at = { x: opening.at.x + across, y: opening.at.y + up };
  const moved: Opening = { ...opening, at };
  const outer = (each: Opening) => frameOuter(each) ?? openingBox(each);
  const box = outer(moved);
  return (
    box.left >= wall.region.bounds.left &&
    box.right <= wall.region.bounds.right &&
    overreaches(wall, moved).length === 0 &&
    stepsUnder(wall, moved).length === 0 &&
    !wall.wall.openings.some((other) => other !== opening && overlaps(box, outer(other)))
  );
}

function placeEdits(
  state: DocumentState,
  { origin, at }: Opening,
  across: Nm,
  up: Nm,
): TextEdit[] | null {
  const statement = statementFrom(state, origin);
  if (statement?.kind !== "opening") return null;
  const place = statement.body.find((part) => part.kind === "at");
  if (!place || place.xTo || place.yTo) return null;
  const { units } = state.outcome.plan;
  const edits = [
    ...(across === 0 ? [] : [{ written: place.x, to: at.x + across }]),
    ...(up === 0 ? [] : [{ written: place.y, to: at.y + up }]),
  ];
  return edits.flatMap(({ written, to }) =>
    written ? [{ range: state.tree.lines.range(written), text: exactLength(to, units) }] : [],
  );
}
