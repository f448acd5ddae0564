import { formatLength, type Unit } from "../../measure/index.js";
import {
  holeFits,
  layRound,
  restHeights,
  openingFits,
  type SolvedLay,
  type SolvedWall,
  stopHeights,
  topLay,
  type WholeSize,
} from "../../solver/index.js";
import { folded } from "../folded.js";
import { holeFitWords, openingFitWords, type Print, restWords, stopWords } from "./fit-words.js";
import { LINE_WIDTH } from "./line-width.js";

const INDENT = "    ";

/** Working back from the tile: what would have to stand where for tiles to stay whole, lay by lay. */
export function* wholeTilesText(solved: SolvedWall, units: Unit): Generator<string> {
  for (const lay of solved.lays) yield* layText(solved, lay, units);
}

function* layText(solved: SolvedWall, lay: SolvedLay, units: Unit): Generator<string> {
  const print = (nm: number): string => formatLength(nm, units);
  const lines = [
    ...openingLines(solved, lay, print),
    ...restLines(solved, lay, print),
    ...holeLines(solved, lay, print),
    ...stopLines(solved, lay, print),
  ];
  if (lines.length === 0) return;
  const start = lay.choice
    ? "from the start chosen now (write it down first)"
    : "its start as it is written";
  const of = solved.lays.length > 1 ? ` of ${lay.lay.name}` : "";
  yield `\n  worked back from the tile${of}, ${start}:\n`;
  for (const line of lines) {
    for (const part of folded(line, LINE_WIDTH - INDENT.length, "    ")) yield `${INDENT}${part}\n`;
  }
}

function openingLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  return solved.wall.openings.flatMap((opening) => {
    const fits = layRound(solved, opening) === lay ? openingFits(solved, lay, opening) : null;
    if (!fits) return [];
    const [first, ...more] = openingFitWords(fits, print);
    const { across, up } = fits.sizes;
    const sizes =
      `  its sizes of whole tiles: across ${sizeWords(across, "tile", print)}; ` +
      `up ${sizeWords(up, "course", print)}`;
    return [`${opening.kind} ${opening.name}: ${[first!, ...more].join("; ")}`, sizes];
  });
}

/** Of benches, curbs and soffits. */
function restLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  return solved.wall.openings.flatMap((opening) => {
    const rest = layRound(solved, opening) === lay ? restHeights(solved, lay, opening) : null;
    const words = rest ? restWords(rest, print) : [];
    return words.length === 0 ? [] : [`${opening.kind} ${opening.name}: ${words.join("; ")}`];
  });
}

function holeLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  return solved.wall.holes.flatMap((hole) => {
    if (layRound(solved, hole) !== lay) return [];
    const words = holeFitWords(holeFits(lay, hole), print);
    return words.length === 0 ? [] : [`hole ${hole.name}: ${words.join("; ")}`];
  });
}

function stopLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  const stops = topLay(solved) === lay ? stopHeights(solved, lay) : null;
  return stops ? [`the wall: ${stopWords(stops, print)}`] : [];
}

/** `12 1/4 in (1 tile), 24 3/8 in (2)`. */
function sizeWords(sizes: readonly WholeSize[], noun: string, print: Print): string {
  if (sizes.length === 0) return "none";
  return sizes
    .map(({ tiles, size }, i) => {
      const named = i > 0 ? "" : ` ${noun}${tiles === 1 ? "" : "s"}`;
      return `${print(size)} (${tiles}${named})`;
    })
    .join(", ");
}
