import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import type { Hole, Opening, Origin, SourceRange } from "../../model/index.js";
import {
  holeFits,
  layRound,
  restHeights,
  type SolvedLay,
  type SolvedWall,
  stopHeights,
  topLay,
} from "../../solver/index.js";
import type { Span } from "../../language/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { statementFrom } from "../statement-from.js";
import { writeChoice } from "../write-choice.js";
import type { Fix } from "./fix.js";

/**
 * Rewrites for the lines that a stretch touches: no rule asks for them, but plumbing and framing may still move. A hole's middle
 * goes to that of a tile or a joint; a bench, a curb, a soffit and a free top end where a course is whole.
 */
export function wholeTiles(state: DocumentState, range: SourceRange): Fix[] {
  const { file } = state.document;
  const isHere = ({ origin }: { readonly origin: Origin }, on = origin.range): boolean =>
    origin.file === file && on.start.line <= range.end.line && on.end.line >= range.start.line;
  return state.outcome.solved.walls.flatMap((wall) => [
    ...wall.wall.holes
      .filter((hole) => isHere(hole))
      .flatMap((hole) => holeFixes(state, wall, hole)),
    ...wall.wall.openings
      .filter((opening) => isHere(opening))
      .flatMap((opening) => restFixes(state, wall, opening)),
    ...stopFixes(state, wall).filter(({ edits: [edit] }) => isHere(wall.wall, edit!.range)),
  ]);
}

/** What is to be written in place of an expression. */
type Rewrite = readonly [written: Span, nm: Nm];

/** What is left to the solver would be chosen anew, and the joints would move: it is written down too. */
function fixesOf(
  state: DocumentState,
  lay: SolvedLay,
  title: string,
  rewrites: readonly Rewrite[],
): Fix[] {
  const started = lay.choice ? writeChoice(state, lay) : [];
  if (!started) return [];
  const { units } = state.outcome.plan;
  const edits: TextEdit[] = rewrites.map(([written, nm]) => ({
    range: state.tree.lines.range(written),
    text: exactLength(nm, units),
  }));
  const also = lay.choice ? ", and write the chosen start down" : "";
  return [
    { title: `${title}${also}`, mends: null, preferred: false, edits: [...edits, ...started] },
  ];
}

function holeFixes(state: DocumentState, wall: SolvedWall, hole: Hole): Fix[] {
  const lay = layRound(wall, hole);
  const statement = statementFrom(state, hole.origin);
  if (!lay || statement?.kind !== "hole") return [];
  const { units } = state.outcome.plan;
  const fits = holeFits(lay, hole);
  return (["tile", "joint"] as const).flatMap((what) => {
    const at = fits[what];
    if (!at || (at.x === hole.at.x && at.y === hole.at.y)) return [];
    const title = `Move ${hole.name} to the middle of a ${what}: ${formatLength(at.x, units)}, ${formatLength(at.y, units)}`;
    const moved: readonly (readonly [Span, Nm, Nm])[] = [
      [statement.x, hole.at.x, at.x],
      [statement.y, hole.at.y, at.y],
    ];
    const rewrites = moved
      .filter(([, was, is]) => was !== is)
      .map(([written, , is]) => [written, is] as const);
    return fixesOf(state, lay, title, rewrites);
  });
}

function restFixes(state: DocumentState, wall: SolvedWall, opening: Opening): Fix[] {
  const lay = layRound(wall, opening);
  const heights = lay && restHeights(wall, lay, opening);
  const statement = statementFrom(state, opening.origin);
  if (!lay || !heights || heights.isWhole || statement?.kind !== "opening") return [];
  const size = statement.body.find((part) => part.kind === "size");
  const at = statement.body.find((part) => part.kind === "at");
  if (!size || !at) return [];
  const { units } = state.outcome.plan;
  const { name, at: place, size: own } = opening;
  return [heights.below, heights.above].flatMap((height) => {
    if (height === null) return [];
    const isTop = heights.edge === "top";
    const up = isTop ? height - place.y : place.y + own.up - height;
    const lower: readonly Rewrite[] = !isTop && at.y ? [[at.y, height]] : [];
    const title = `Let whole courses ${isTop ? "begin over" : "end under"} ${name}: its ${heights.edge} at ${formatLength(height, units)}`;
    return fixesOf(state, lay, title, [[size.second, up], ...lower]);
  });
}

/** Only a free top may stop elsewhere. */
function stopFixes(state: DocumentState, wall: SolvedWall): Fix[] {
  const { origin, edges, stop } = wall.wall;
  const lay = topLay(wall);
  const heights = lay && edges.top.meets.kind === "free" && !stop ? stopHeights(wall, lay) : null;
  const statement = statementFrom(state, origin);
  if (!lay || !heights || heights.isWhole || statement?.kind !== "wall") return [];
  const size = statement.body.find((part) => part.kind === "size");
  if (!size) return [];
  const { units } = state.outcome.plan;
  return [heights.below, heights.above].flatMap((height) => {
    if (height === null || height <= 0) return [];
    const title = `Stop the tile at a whole course: its top at ${formatLength(height, units)}`;
    return fixesOf(state, lay, title, [[size.second, height]]);
  });
}
