import { encloses, overlaps, type Box } from "./box.js";
import { classify } from "./classify.js";
import { CourseSpan } from "./course-span.js";
import { cutTile, type Obstacles, type TilePart } from "./cut-tile.js";
import {
  cellsWithin,
  courseBottom,
  firstPast,
  lastBefore,
  moduleAcross,
  moduleUp,
} from "./lattice.js";
import { PieceBuilder } from "./piece-builder.js";
import type { PieceTable } from "./piece-table.js";
import type { Course, Lattice, Region } from "./solved.js";
import { visibleOf } from "./visible.js";

/** The courses and pieces of a region, and the lattice with its course 1 found. */
export interface LaidPieces {
  readonly lattice: Lattice;
  readonly courses: readonly Course[];
  readonly pieces: PieceTable;
}

/**
 * Lays a region. `lattice.y` may be the bottom of any course: course 1 becomes the lowest course
 * with a piece in it, and has a tile at `lattice.x`.
 */
export function layPieces(region: Region, lattice: Lattice): LaidPieces {
  const { bounds } = region;
  const up = moduleUp(lattice);
  const lowest = firstPast(lattice.y, lattice.face.up, up, bounds.bottom);
  const highest = lastBefore(lattice.y, up, bounds.top);
  const builder = new PieceBuilder(cellsWithin(lattice, bounds));
  const ground: Ground = { region, obstacles: obstaclesOf(region) };
  let numbered: Lattice = lattice;
  let first = lowest;
  const courses: Course[] = [];
  for (let row = lowest; row <= highest; row++) {
    if (builder.count === 0) {
      // Nothing is laid yet, so this row may be course 1.
      first = row;
      numbered = { ...lattice, y: lattice.y + row * up };
      builder.restart();
      courses.length = 0;
    }
    const number = row - first + 1;
    const bottom = courseBottom(numbered, number);
    builder.beginCourse();
    courses.push({ number, bottom, top: bottom + lattice.face.up });
    layCourse(builder, ground, numbered, number);
  }
  const pieces = builder.build();
  return { lattice: numbered, courses: courses.slice(0, pieces.courseStart.length - 1), pieces };
}

/** A region, and what of it courses have to go round. */
interface Ground {
  readonly region: Region;
  readonly obstacles: Obstacles;
}

function layCourse(builder: PieceBuilder, ground: Ground, lattice: Lattice, number: number): void {
  const { region } = ground;
  const span = new CourseSpan(region, lattice, number);
  if (span.first > span.last) return;
  const obstacles = obstaclesWithin(ground.obstacles, span);
  const module = moduleAcross(lattice);
  let column = span.first;
  for (const [from, to] of cutStretches(span, obstacles, lattice)) {
    addWhole(column, from - 1);
    for (let k = Math.max(column, from); k <= to; k++) addCut(k);
    column = Math.max(column, to + 1);
  }
  addWhole(column, span.last);

  function addWhole(from: number, to: number): void {
    if (from > to || span.rowBottom >= span.rowTop) return;
    builder.addRow({
      left: span.origin + from * module,
      bottom: span.rowBottom,
      width: lattice.face.across,
      top: span.rowTop,
      module,
      many: to - from + 1,
      course: number,
      column: from - span.first + 1,
      cut: span.rowCut,
    });
  }

  function addCut(k: number): void {
    const left = span.origin + k * module;
    const tile: Box = {
      left,
      bottom: span.bottom,
      right: left + lattice.face.across,
      top: span.top,
    };
    const parts = partsOf(tile, region, span, obstacles);
    for (let part = 0; part < parts.length; part++) {
      const { bounds, shape } = parts[part]!;
      builder.add({
        bounds,
        course: number,
        column: k - span.first + 1,
        part,
        cut: classify(parts[part]!, tile),
        shape,
        visible: visibleOf(parts[part]!, region),
      });
    }
  }
}

/** The parts of a tile of a course. Most are plain: they end with the course, or are gone with an opening. */
function partsOf(
  tile: Box,
  region: Region,
  span: CourseSpan,
  obstacles: Obstacles,
): readonly TilePart[] {
  const { boxes, circles } = obstacles;
  const meets = (box: Box) => overlaps(box, tile);
  if (boxes.some((box) => encloses(box, tile))) return [];
  if (!span.isSquare || boxes.some(meets) || circles.some(meets)) {
    return cutTile(tile, region, obstacles);
  }
  const bounds = span.rowWithin(tile);
  return bounds ? [{ bounds, shape: null, touched: null }] : [];
}

function obstaclesOf({ takeaways, steps, roundHoles }: Region): Obstacles {
  return {
    boxes: [...takeaways.map(({ box }) => box), ...steps],
    circles: roundHoles.map(({ box }) => box),
  };
}

function obstaclesWithin({ boxes, circles }: Obstacles, { bottom, top }: CourseSpan): Obstacles {
  const meets = (box: Box) => box.bottom < top && box.top > bottom;
  return { boxes: boxes.filter(meets), circles: circles.filter(meets) };
}

/** The stretches of columns that may be cut, in order: both ends, and round each obstacle. */
function cutStretches(
  span: CourseSpan,
  obstacles: Obstacles,
  lattice: Lattice,
): (readonly [number, number])[] {
  if (!span.isLevel) return [[span.first, span.last]];
  const module = moduleAcross(lattice);
  const around = [...obstacles.boxes, ...obstacles.circles].map((box) => {
    const from = firstPast(span.origin, lattice.face.across, module, box.left);
    const to = lastBefore(span.origin, module, box.right);
    return [Math.max(from, span.first), Math.min(to, span.last)] as const;
  });
  const ends = [
    [span.first, Math.min(span.wholeFrom - 1, span.last)] as const,
    [Math.max(span.wholeTo + 1, span.first), span.last] as const,
  ];
  return [...ends, ...around].filter(([from, to]) => from <= to).sort((a, b) => a[0] - b[0]);
}
