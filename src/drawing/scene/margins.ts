import type { SolvedWall } from "../../solver/index.js";
import { boxRound, lineHeight, makeLabel } from "../labels.js";
import { across } from "../picture.js";
import type { DimensionRank, Label, PictureBox, RuledLine } from "../scene.js";
import { fitText } from "../text-metrics.js";
import { courseNumbers, softLabels } from "./course-numbers.js";
import { centreLine, levelLine } from "./datum-lines.js";
import { columnWishes, rightWish, rowWishes } from "./measures.js";
import { layColumn, layRow } from "./rank.js";
import type { Setting } from "./setting.js";
import { edgeWords } from "./words.js";

/** What stands round a wall: edges' captions, course numbers, dimensions, the level and centre lines. */
export interface Margins {
  readonly labels: readonly Label[];
  readonly lines: readonly RuledLine[];
  readonly dimensions: readonly DimensionRank[];
}

const CAPTION_SIZE = 0.85;
/** From one row of dimensions to the next, and from the wall to the first column. */
const ROW_PITCH = 1.95;
const COLUMN_GAP = 0.9;
/** A side this many ems high has its caption beside it; a lower one's is told below the wall. */
const CAPTION_ROOM = 14;

/** The margins of the wall whose bare outline has these bounds; `told` are further lines below it. */
export function wallMargins(
  solved: SolvedWall,
  bare: PictureBox,
  told: readonly string[],
  setting: Setting,
): Margins {
  const left = leftOf(solved, bare, setting);
  const right = rightOf(solved, bare, setting);
  const above = aboveOf(solved, bare, setting);
  const columns = boxRound([bare, ...left.labels.map(boxOf), ...right.labels.map(boxOf)])!;
  const below = belowOf(solved, { ...bare, bottom: columns.bottom }, bare, told, setting);
  const beside = [...left.labels, ...right.labels];
  const centre = centreLine(above.centre, bare, [above.caption, ...below.labels], setting);
  const level = levelLine(bare, columns, { beside, below: below.labels }, setting);
  return {
    labels: [...beside, above.caption, above.centre, ...below.labels, level.label],
    lines: [...left.lines, ...right.lines, ...below.lines, ...centre, ...level.lines],
    dimensions: [...left.dimensions, ...right.dimensions, ...below.dimensions],
  };
}

/** Outwards from the wall: the edge's caption, then the columns of dimensions. */
function leftOf(solved: SolvedWall, bare: PictureBox, setting: Setting): Margins {
  const { em } = setting;
  const caption = sideCaption(solved, "left", bare, bare.left - 0.85 * em, setting);
  const columns = columnWishes(solved, setting);
  return columnsFrom(columns, bare.left, bare.left - 1.5 * em, "left", caption, em);
}

/** Outwards from the wall: course numbers, the edge's caption, a column where the right end differs. */
function rightOf(solved: SolvedWall, bare: PictureBox, setting: Setting): Margins {
  const { em } = setting;
  const courses = courseNumbers(solved, bare, setting);
  const numbers = [...courses, ...softLabels(solved, bare, courses, setting)];
  const outer = Math.max(bare.right, ...numbers.map((label) => label.box.right));
  const caption = sideCaption(solved, "right", bare, outer + 0.85 * em, setting);
  const wish = rightWish(solved, setting);
  const labels = [...numbers, ...caption];
  return columnsFrom(wish ? [wish] : [], bare.right, outer + 1.5 * em, "right", labels, em);
}

function columnsFrom(
  wishes: readonly Parameters<typeof layColumn>[0][],
  wall: number,
  start: number,
  side: "left" | "right",
  labels: readonly Label[],
  em: number,
): Margins {
  const outwards = side === "left" ? -1 : 1;
  let line = start;
  const laid = wishes.map((wish) => {
    line += outwards * 0.2 * em;
    const column = layColumn(wish, { em, line, wall }, side);
    line += outwards * (column.reach + COLUMN_GAP) * em;
    return column;
  });
  return {
    labels: [...labels, ...laid.flatMap((column) => column.labels)],
    lines: laid.flatMap((column) => column.leaders),
    dimensions: laid.map((column) => column.rank),
  };
}

/** The top edge's caption, and over it the centre line's name. */
function aboveOf(
  solved: SolvedWall,
  bare: PictureBox,
  setting: Setting,
): { caption: Label; centre: Label } {
  const { em } = setting;
  const size = CAPTION_SIZE * em;
  const middle = across(solved.wall.size.across / 2);
  const row = bare.top - 0.95 * em;
  const caption = makeLabel({
    text: fitText(edgeWords(solved.wall.edges.top, setting), captionRoom(bare, em), size),
    role: "caption",
    x: bare.left,
    y: row,
    size,
    anchor: "start",
  });
  // On a row of its own, so that the headings of walls side by side stand level.
  const centre = makeLabel({
    text: "centre line",
    role: "caption",
    x: middle,
    y: row - lineHeight(size),
    size,
  });
  return { caption, centre };
}

/** The bottom edge's caption, the rows of dimensions, then what found no room elsewhere. */
function belowOf(
  solved: SolvedWall,
  from: PictureBox,
  bare: PictureBox,
  told: readonly string[],
  setting: Setting,
): Margins {
  const { em } = setting;
  const size = CAPTION_SIZE * em;
  const start = { role: "caption", x: bare.left, size, anchor: "start" } as const;
  const bottomWords = fitText(
    edgeWords(solved.wall.edges.bottom, setting),
    captionRoom(bare, em),
    size,
  );
  const labels: Label[] = [makeLabel({ ...start, text: bottomWords, y: from.bottom + 0.95 * em })];
  let line = from.bottom + (1.1 + ROW_PITCH) * em;
  const rows = rowWishes(solved, setting).map((wish) => {
    const row = layRow(wish, { em, line, wall: bare.bottom, left: bare.left });
    line += ROW_PITCH * em;
    return row;
  });
  const sides = (["left", "right"] as const)
    .filter(() => !hasSideCaptions(bare, em))
    .map((side) => `${side}: ${edgeWords(solved.wall.edges[side], setting)}`);
  let y = line - ROW_PITCH * em + 1.2 * em;
  for (const text of [...sides, ...told]) {
    labels.push(makeLabel({ ...start, text: fitText(text, captionRoom(bare, em), size), y }));
    y += lineHeight(size);
  }
  return {
    labels: [...labels, ...rows.flatMap((row) => row.labels)],
    lines: rows.flatMap((row) => row.leaders),
    dimensions: rows.map((row) => row.rank),
  };
}

function sideCaption(
  solved: SolvedWall,
  side: "left" | "right",
  bare: PictureBox,
  x: number,
  setting: Setting,
): Label[] {
  const { em } = setting;
  if (!hasSideCaptions(bare, em)) return [];
  const size = CAPTION_SIZE * em;
  const words = edgeWords(solved.wall.edges[side], setting);
  const text = fitText(words, bare.bottom - bare.top - em, size);
  const y = (bare.top + bare.bottom) / 2;
  return [makeLabel({ text, role: "caption", x, y, size, upward: true })];
}

function hasSideCaptions(bare: PictureBox, em: number): boolean {
  return bare.bottom - bare.top >= CAPTION_ROOM * em;
}

/** A wall's captions may be wider than a narrow wall, though not without end. */
function captionRoom(bare: PictureBox, em: number): number {
  return Math.max(bare.right - bare.left, 30 * em);
}

function boxOf(label: Label): PictureBox {
  return label.box;
}
