import { softPlace } from "../rules/index.js";
import { softJoints, softLength, type SoftRun, type SolvedWall } from "../solver/index.js";
import type { Figures } from "./figures.js";
import { heading, lines, paragraphs } from "./markdown.js";

/** The soft joints of a wall's tile that one statement makes: which they are, how wide, and how long in all. */
export function hoverSoft(
  wall: SolvedWall,
  isStated: (run: SoftRun) => boolean,
  figures: Figures,
): string | null {
  const runs = softJoints(wall).runs.filter(isStated);
  const [first] = runs;
  if (!first) return null;
  const length = runs.reduce((sum, run) => sum + softLength(run), 0);
  return paragraphs([
    heading("soft joint", softPlace(first.name, figures.unit)),
    lines([`${figures.length(first.to - first.from)} wide, ${figures.length(length)} long`]),
  ]);
}
