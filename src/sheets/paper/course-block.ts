import { plainText } from "../../drawing/index.js";
import type { SolvedWall } from "../../solver/index.js";
import { type CourseRow, courseRows, type Met } from "../setting-out/course-table.js";
import { NONE, tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";
import { openingWords } from "./words.js";

const COLUMNS = [
  ">Course",
  ">Bottom",
  ">Top",
  "Height",
  ">Left",
  ">Middle",
  ">Right",
  "Meets",
] as const;

/** Every course with its running heights from the datum, the top one first, as on the wall. */
export function courseBlocks(ground: Ground, wall: SolvedWall): Block[] {
  const rows = wall.lays.flatMap((lay) => courseRows(wall, lay)).reverse();
  return tableOfSome(
    "Courses: heights from the datum; left, middle and right where the wall cuts them",
    COLUMNS,
    rows.map((row) => cells(ground, row)),
  );
}

function cells({ length, both }: Ground, row: CourseRow): string[] {
  const { left, middle, right } = row.heights;
  const heights = row.cut ? [left, middle, right].map((h) => (h > 0 ? length(h) : NONE)) : null;
  return [
    `${row.number}`,
    both(row.bottom),
    both(row.top),
    row.cut ? "cut" : "whole",
    ...(heights ?? [NONE, NONE, NONE]),
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
