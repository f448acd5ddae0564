import { acrossWords, choiceText, exactJointWords, upWords } from "../sheets/index.js";
import { FLATNESS, flatnessFor } from "../rules/index.js";
import { moduleAcross, moduleUp, type SolvedLay, visibleBounds } from "../solver/index.js";
import type { Figures } from "./figures.js";
import { setFigures } from "./hover-set.js";
import { columns, heading, lines, paragraphs, plain } from "./markdown.js";

/** Of a bond with more phases than this, the end cuts of the first ones are told. */
const MOST_PHASES = 4;

/**
 * A lay in figures: its tile and module, how it starts, its end cuts, and why it was chosen so. Of one that is set
 * in part these are the figures of what is still to come, with what is set (`parts`, from the bottom up).
 */
export function hoverLay(parts: readonly SolvedLay[], figures: Figures): string {
  const solved = parts.at(-1)!;
  const { lay, lattice, choice } = solved;
  const { tile } = lay;
  const { unit } = figures;
  const chosen = (part: "across" | "up"): string =>
    choice?.left.includes(part) ? " (chosen)" : "";
  return paragraphs([
    heading("lay", tile.name, tile.title),
    lines([
      `face ${figures.size(tile.face.across, tile.face.up)}, module ${figures.size(moduleAcross(lattice), moduleUp(lattice))}`,
      jointWords(solved, figures),
      plain(acrossWords(solved.across, unit)) + chosen("across"),
      plain(upWords(solved.up, unit)) + chosen("up"),
      ...parts.flatMap((part) => setFigures(part, figures)),
      ...endCuts(solved, figures),
      flatnessWanted(solved, figures),
    ]),
    choice ? columns([...choiceText(choice, unit)].map(outdented).join("")) : null,
    choice ? "The lamp writes what was chosen down, so that it stays." : null,
  ]);
}

/** A joint that was chosen as wide as no spacer is told exactly, too, with the spacers that come nearest to it. */
function jointWords(solved: SolvedLay, figures: Figures): string {
  const joint = `joint ${figures.length(solved.joint)}`;
  if (!solved.choice?.left.includes("joint")) return joint;
  const exact = exactJointWords(solved, figures.unit);
  return `${joint} (chosen${exact ? `: ${exact}` : ""})`;
}

/** Told here, since no plan can show it: every lay wants it, and only the wall has it. */
function flatnessWanted({ lay }: SolvedLay, figures: Figures): string {
  const { long, short } = flatnessFor(lay.tile);
  const [inLong, inShort] = [long, short].map(
    ({ off, in: run }) => `${figures.length(off)} over ${figures.length(run)}`,
  );
  return `the wall is to be flat to ${inLong!} and ${inShort!} (${FLATNESS.source})`;
}

function outdented(line: string): string {
  return line.replace(/^ {2}/, "");
}

/** What is seen of the first and last piece, for each phase of the bond. */
function endCuts({ pieces, lattice, below }: SolvedLay, figures: Figures): string[] {
  const courses = pieces.courseStart.length - 1;
  const phases = Math.min(lattice.q, MOST_PHASES, courses);
  return Array.from({ length: phases }, (_, row) => {
    const ends = [pieces.courseStart[row]!, pieces.courseStart[row + 1]! - 1].map((i) => {
      const seen = visibleBounds(pieces, i);
      const width = seen ? seen.right - seen.left : 0;
      const whole = width === lattice.face.across;
      return seen ? `${figures.length(width)}${whole ? " (whole)" : ""}` : "hidden";
    });
    const which = lattice.q === 1 ? "end cuts" : `ends of course ${below + row + 1}`;
    return `${which}: left ${ends[0]!}, right ${ends[1]!}`;
  });
}
