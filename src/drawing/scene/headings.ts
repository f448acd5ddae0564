import type { SolvedWall } from "../../solver/index.js";
import { lineHeight, makeLabel } from "../labels.js";
import { across } from "../picture.js";
import type { Label, PictureBox } from "../scene.js";
import { fitText, wrapText } from "../text-metrics.js";
import type { Setting } from "./setting.js";
import { layWords, wallTitle } from "./words.js";

const HEADING_SIZE = 1.35;
const NOTE_SIZE = 0.9;
/** A heading may be this wide over a narrow wall, in ems. */
const HEADING_ROOM = 31;

/** What a wall is laid with, in lines that fit over it. */
export function headingLines(solved: SolvedWall, setting: Setting): string[] {
  const room = headingRoom(solved, setting);
  return layWords(solved, setting).flatMap((line) =>
    wrapText(line, room, NOTE_SIZE * setting.em, 3),
  );
}

/**
 * A wall's title and lines over all that is drawn above it. `most` is the number of lines that the
 * plan's longest heading has: room is kept for them, so that titles of equal walls stand level.
 */
export function wallHeadings(
  solved: SolvedWall,
  drawn: PictureBox,
  most: number,
  setting: Setting,
): Label[] {
  const { em } = setting;
  const size = NOTE_SIZE * em;
  const start = { x: drawn.left, anchor: "start" } as const;
  const first = drawn.top - 0.9 * em - lineHeight(size) * (most - 0.5);
  const heading = makeLabel({
    ...start,
    text: fitText(wallTitle(solved.wall), headingRoom(solved, setting), HEADING_SIZE * em, "bold"),
    role: "heading",
    y: first - 1.75 * em,
    size: HEADING_SIZE * em,
    bold: true,
  });
  const notes = headingLines(solved, setting).map((text, i) =>
    makeLabel({ ...start, text, role: "note", y: first + i * lineHeight(size), size }),
  );
  return [heading, ...notes];
}

function headingRoom({ wall }: SolvedWall, { em }: Setting): number {
  return Math.max(across(wall.size.across), HEADING_ROOM * em);
}
