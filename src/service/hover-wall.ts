import { counted } from "../measure/index.js";
import { layReading } from "../sheets/index.js";
import { cutOf, type Cut, CUTS, type SolvedLay, type SolvedWall } from "../solver/index.js";
import { CUT_WORDS } from "./cut-words.js";
import type { Figures } from "./figures.js";
import { heading, lines, paragraphs } from "./markdown.js";

/** A wall in figures: its size, courses, pieces, cuts by kind and the smallest of them. */
export function hoverWall(solved: SolvedWall, figures: Figures): string {
  const { name, title, size } = solved.wall;
  return paragraphs([
    heading("wall", name, title),
    lines([`size ${figures.size(size.across, size.up)}`, ...layLines(solved, figures)]),
  ]);
}

function layLines(solved: SolvedWall, figures: Figures): string[] {
  const { refused, lays } = solved;
  if (refused) {
    return [`not laid: it asks for ${refused.pieces} pieces, and the most is ${refused.most}`];
  }
  if (lays.length === 0) return ["no tile is laid on it"];
  return lays.flatMap((lay) => {
    const { courses, pieces, cuts, smallest } = layReading(solved.wall, lay);
    return [
      `${counted(courses, "course")}, ${counted(pieces, "piece")}, ${counted(cuts, "cut")}`,
      cutsByKind(lay),
      smallest
        ? `smallest cut ${figures.size(smallest.width, smallest.height)}, piece ${smallest.piece}`
        : "",
    ];
  });
}

/** `12 end cuts, 30 rips, 2 L cuts`. */
export function cutsByKind({ pieces }: SolvedLay): string {
  const counts = new Map<Cut, number>();
  for (let i = 0; i < pieces.count; i++) {
    const cut = cutOf(pieces, i);
    counts.set(cut, (counts.get(cut) ?? 0) + 1);
  }
  return CUTS.filter((cut) => cut !== "none" && counts.has(cut))
    .map((cut) => cutCount(counts.get(cut)!, cut))
    .join(", ");
}

function cutCount(count: number, cut: Cut): string {
  if (cut === "hole") return `${count} ${CUT_WORDS[cut]}`;
  return counted(count, CUT_WORDS[cut]);
}
