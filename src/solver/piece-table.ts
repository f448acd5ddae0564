import type { Box } from "./box.js";
import { boundsOf, doubleShapeArea, ringOf, type Shape } from "./shape.js";

/** How a piece is cut from its tile. Worst first wins where several apply: hole, scribe, slot, notch. */
export const CUTS = [
  "none",
  /** Crosscut: narrower than the tile. */
  "end",
  /** Ripped: lower than the tile. */
  "rip",
  /** Both. */
  "corner",
  /** An L: one corner is missing. */
  "notch",
  /** A U, or any other square-cornered shape. */
  "slot",
  /** Cut along a slope. */
  "scribe",
  /** A round hole or bite, or an opening inside the tile. */
  "hole",
] as const;

export type Cut = (typeof CUTS)[number];

/** How much of a piece is seen, where another wall's tile covers its end. */
export interface Visible {
  /** The parts that are seen; none when the piece is wholly hidden. */
  readonly shapes: readonly Shape[];
}

/**
 * The pieces of a lay, course by course from the bottom, left to right. Held as columns of numbers,
 * so that a million plain tiles cost a few flat arrays; only pieces that are no plain rectangle, and
 * those partly hidden, hold an object of their own.
 */
export interface PieceTable {
  readonly count: number;
  /** Bounds of piece i at 4i: left, bottom, right, top (nm). */
  readonly bounds: Float64Array;
  /** Course number, from 1. */
  readonly course: Int32Array;
  /** Place in the course, from 1 at the region's left; the parts of one tile share it. */
  readonly column: Int32Array;
  /** Which part of its tile a piece is: 0 for the only or the lowest, leftmost one. */
  readonly part: Uint8Array;
  /** Index into CUTS. */
  readonly cut: Uint8Array;
  /** Index of the first piece of each course, and at the end the count. */
  readonly courseStart: Int32Array;
  /** The shapes of those pieces that are not their bounds. */
  readonly shapes: ReadonlyMap<number, Shape>;
  /** What is seen of those pieces that are partly or wholly hidden. */
  readonly visible: ReadonlyMap<number, Visible>;
}

export function cutOf(pieces: PieceTable, i: number): Cut {
  return CUTS[pieces.cut[i]!]!;
}

export function pieceBounds(pieces: PieceTable, i: number): Box {
  const b = pieces.bounds;
  return { left: b[4 * i]!, bottom: b[4 * i + 1]!, right: b[4 * i + 2]!, top: b[4 * i + 3]! };
}

export function pieceShape(pieces: PieceTable, i: number): Shape {
  return pieces.shapes.get(i) ?? { outline: ringOf(pieceBounds(pieces, i)), holes: [] };
}

/** The parts of a piece that are seen. */
export function visibleShapes(pieces: PieceTable, i: number): readonly Shape[] {
  return pieces.visible.get(i)?.shapes ?? [pieceShape(pieces, i)];
}

/** What a piece's id is made from. */
export interface Numbering {
  readonly pieces: PieceTable;
  /** The wall's name, and the lay's where it isn't the wall's main one. */
  readonly idPrefix: string;
  /** How many courses are counted under the lay's first one. */
  readonly below: number;
}

/** The lay whose courses are counted by themselves, as a panel's are; null where they are the wall's. */
export function countingLay({ idPrefix }: Pick<Numbering, "idPrefix">): string | null {
  return idPrefix.split("/")[1] ?? null;
}

/** `wall/course/column`, with a letter from `b` on for the further parts of one tile. */
export function pieceId({ pieces, idPrefix, below }: Numbering, i: number): string {
  const part = pieces.part[i]!;
  const letter = part === 0 ? "" : String.fromCharCode("a".charCodeAt(0) + Math.min(part, 25));
  return `${idPrefix}/${below + pieces.course[i]!}/${pieces.column[i]!}${letter}`;
}

/** Twice the area of a piece in square nanometres, exact. */
export function doublePieceArea(pieces: PieceTable, i: number): bigint {
  const shape = pieces.shapes.get(i);
  if (shape) return doubleShapeArea(shape);
  const { left, bottom, right, top } = pieceBounds(pieces, i);
  return 2n * BigInt(right - left) * BigInt(top - bottom);
}

/** The bounds of what is seen of a piece, or null when nothing is. */
export function visibleBounds(pieces: PieceTable, i: number): Box | null {
  const seen = pieces.visible.get(i);
  if (!seen) return pieceBounds(pieces, i);
  if (seen.shapes.length === 0) return null;
  const boxes = seen.shapes.map((shape) => boundsOf(shape.outline));
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    bottom: Math.min(...boxes.map((box) => box.bottom)),
    right: Math.max(...boxes.map((box) => box.right)),
    top: Math.max(...boxes.map((box) => box.top)),
  };
}
