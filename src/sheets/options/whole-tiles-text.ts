import { formatLength, type Unit } from "../../measure/index.js";
import {
  holeFits,
  openingFits,
  type SolvedLay,
  type SolvedWall,
  stopHeights,
  type WholeSize,
} from "../../solver/index.js";
import { folded } from "../folded.js";
import { holeFitWords, openingFitWords, type Print, stopWords } from "./fit-words.js";
import { LINE_WIDTH } from "./line-width.js";

const INDENT = "    ";

/** Working back from the tile: what would have to stand where for tiles to stay whole. */
export function* wholeTilesText(
  solved: SolvedWall,
  lay: SolvedLay,
  units: Unit,
): Generator<string> {
  const print = (nm: number): string => formatLength(nm, units);
  const lines = [
    ...openingLines(solved, lay, print),
    ...holeLines(solved, lay, print),
    ...stopLines(solved, lay, print),
  ];
  if (lines.length === 0) return;
  const start = lay.choice
    ? "from the start chosen now (write it down first)"
    : "its start as it is written";
  yield `\n  worked back from the tile, ${start}:\n`;
  for (const line of lines) {
    for (const part of folded(line, LINE_WIDTH - INDENT.length, "    ")) yield `${INDENT}${part}\n`;
  }
}

function openingLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  return solved.wall.openings.flatMap((opening) => {
    const fits = openingFits(solved, lay, opening);
    if (!fits) return [];
    const [first, ...more] = openingFitWords(fits, print);
    const { across, up } = fits.sizes;
    const sizes =
      `  its sizes of whole tiles: across ${sizeWords(across, "tile", print)}; ` +
      `up ${sizeWords(up, "course", print)}`;
    return [`${opening.kind} ${opening.name}: ${[first!, ...more].join("; ")}`, sizes];
  });
}

function holeLines({ wall }: SolvedWall, lay: SolvedLay, print: Print): string[] {
  return wall.holes.flatMap((hole) => {
    const words = holeFitWords(holeFits(lay, hole), print);
    return words.length === 0 ? [] : [`hole ${hole.name}: ${words.join("; ")}`];
  });
}

function stopLines(solved: SolvedWall, lay: SolvedLay, print: Print): string[] {
  const stops = stopHeights(solved, lay);
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
