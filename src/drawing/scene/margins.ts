import { type Course, isSetCourse, softJoints, type SolvedWall } from "../../solver/index.js";
import { boxRound, boxesOverlap, lineHeight, makeLabel } from "../labels.js";
import { across, down, rounded } from "../picture.js";
import type { DimensionRank, Label, PictureBox, RuledLine } from "../scene.js";
import { fitText, textWidth } from "../text-metrics.js";
import { columnWishes, rightWish, rowWishes } from "./measures.js";
import { layColumn, layRow } from "./rank.js";
import { isMain } from "./main-lay.js";
import type { Setting } from "./setting.js";
import { edgeWords } from "./words.js";

/** What stands round a wall: edges' captions, course numbers, dimensions, the level and centre lines. */
export interface Margins {
  readonly labels: readonly Label[];
  readonly lines: readonly RuledLine[];
  readonly dimensions: readonly DimensionRank[];
}

const CAPTION_SIZE = 0.85;
const NUMBER_SIZE = 0.8;
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
  const parts = [left, right, above, below, levelLine(bare, columns, below.labels, setting)];
  return {
    labels: parts.flatMap((part) => part.labels),
    lines: parts.flatMap((part) => part.lines),
    dimensions: parts.flatMap((part) => part.dimensions),
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

/** The top edge's caption, and over it the centre line's name where the two would touch. */
function aboveOf(solved: SolvedWall, bare: PictureBox, setting: Setting): Margins {
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
  const line: RuledLine = {
    kind: "centre",
    points: [middle, centre.box.bottom, middle, bare.bottom + 0.5 * em].map(rounded),
  };
  return { labels: [caption, centre], lines: [line], dimensions: [] };
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

/**
 * The level line runs past everything beside the wall, so that its name stands clear; past the words below it, too,
 * where they come that near.
 */
function levelLine(
  bare: PictureBox,
  columns: PictureBox,
  below: readonly Label[],
  { em }: Setting,
): Margins {
  const end = columns.right + 0.6 * em;
  const nameFrom = (x: number): Label =>
    makeLabel({
      text: "level line",
      role: "caption",
      x: x + 0.4 * em,
      y: 0,
      size: CAPTION_SIZE * em,
      anchor: "start",
    });
  const near = below.filter(({ box }) => boxesOverlap(box, nameFrom(end).box));
  const to = Math.max(end, ...near.map(({ box }) => box.right + 0.6 * em));
  const label = nameFrom(to);
  const points = [bare.left - 0.9 * em, 0, to, 0].map(rounded);
  return { labels: [label], lines: [{ kind: "level", points }], dimensions: [] };
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

/** The number of each course at its right end; every fifth, tenth ... where courses are low. */
function courseNumbers(solved: SolvedWall, bare: PictureBox, { em }: Setting): Label[] {
  const size = NUMBER_SIZE * em;
  const numbers = solved.lays.filter(isMain).flatMap((lay) => {
    const { face, joint } = lay.lattice;
    const { bottom: low, top: high } = lay.region.bounds;
    const course = across(face.up + joint);
    const step = [1, 2, 5, 10, 20, 50, 100].find((n) => n * course >= lineHeight(size)) ?? 1000;
    // That a course is set already is said in words, whatever the colours.
    const textOf = ({ number }: Course): string =>
      `${lay.below + number}${isSetCourse(lay, number) ? " set" : ""}`;
    const widest = Math.max(0, ...lay.courses.map((course) => textWidth(textOf(course), size)));
    return lay.courses
      .filter(({ number }) => step === 1 || number === 1 || (lay.below + number) % step === 0)
      .map((course) =>
        makeLabel({
          text: textOf(course),
          role: "number",
          x: bare.right + 0.5 * em + widest,
          y: down((Math.max(course.bottom, low) + Math.min(course.top, high)) / 2),
          size,
          anchor: "end",
        }),
      );
  });
  // A course that is cut low, or lies between lays, stands nearer to the next one than a whole course does.
  return clearOfEachOther(numbers);
}

/** Which level joints are soft, said beside the courses' numbers. */
function softLabels(
  solved: SolvedWall,
  bare: PictureBox,
  numbers: readonly Label[],
  { em }: Setting,
): Label[] {
  const outer = Math.max(bare.right, ...numbers.map((label) => label.box.right));
  const labels = softJoints(solved)
    .runs.filter(({ way }) => way === "level")
    .map(({ from, to }) =>
      makeLabel({
        text: "soft",
        role: "number",
        x: outer + 0.5 * em,
        y: down((from + to) / 2),
        size: NUMBER_SIZE * em,
        anchor: "start",
      }),
    );
  return clearOfEachOther(labels);
}

function clearOfEachOther(labels: readonly Label[]): Label[] {
  return labels.reduce<Label[]>(
    (kept, label) =>
      kept.some(({ box }) => boxesOverlap(box, label.box)) ? kept : [...kept, label],
    [],
  );
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
