import { plainText } from "../../drawing/index.js";
import type { SolvedWall } from "../../solver/index.js";
import { type CourseRow, courseRows, type Met } from "../setting-out/course-table.js";
import { NONE, tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";
import { openingWords } from "./words.js";

/** Every course with its running heights from the datum, the top one first, as on the wall. */
export function courseBlocks(ground: Ground, wall: SolvedWall): Block[] {
  const rows = wall.lays.flatMap(courseRows).reverse();
  return tableOfSome(
    "Courses: heights from the datum; left, middle and right where the wall cuts them",
    columns(ground),
    rows.map((row) => cells(ground, row)),
  );
}

/** The two readings of a height stand in columns of their own, so that a course is one line. */
function columns({ otherUnit }: Ground): readonly string[] {
  return [
    ">Course",
    ">Bottom",
    `>in ${otherUnit}`,
    ">Top",
    `>in ${otherUnit}`,
    ">Left",
    ">Middle",
    ">Right",
    "Meets",
  ];
}

function cells({ length, other }: Ground, row: CourseRow): string[] {
  const { left, middle, right } = row.heights;
  const heights = [left, middle, right].map((height) => (height > 0 ? length(height) : NONE));
  return [
    row.lay === null ? `${row.number}` : `${row.lay} ${row.number}`,
    length(row.bottom),
    other(row.bottom),
    length(row.top),
    other(row.top),
    ...(row.cut ? heights : ["whole", NONE, NONE]),
    row.meets.map((met) => metWords(met, length)).join("; ") || NONE,
  ];
}

function metWords(met: Met, length: Ground["length"]): string {
  if (met.kind === "hole") return `hole ${plainText(met.hole.name)}`;
  const opening = openingWords(met.opening);
  return met.place === "beside"
    ? `beside ${opening}`
    : `${met.place} ${opening}: ${length(met.rest)} high`;
}
