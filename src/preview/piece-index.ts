import Flatbush from "flatbush";
import { boundsOfPoints, type Place, type Points, type WallScene } from "../drawing/index.js";

/**
 * The pieces of a wall to be found by place and walked through: course by course from the bottom,
 * left to right, as flat arrays. Places are the wall's own: millimetres right of its left substrate
 * and down from its level line.
 */
export interface PieceIndex {
  readonly count: number;
  /** Bounds of piece i at 4i: left, top, right, bottom. */
  readonly bounds: Float64Array;
  readonly course: Int32Array;
  /** The rings of those that are no plain rectangle. */
  readonly shapes: ReadonlyMap<number, readonly Points[]>;
  /** The first piece of each course that has one, and at the end the count. */
  readonly courseStart: Int32Array;
  readonly tree: Flatbush | null;
}

export function indexPieces(wall: WallScene): PieceIndex {
  const raw = gather(wall);
  const order = Uint32Array.from(raw.course.keys()).sort(
    (a, b) => raw.course[a]! - raw.course[b]! || raw.bounds[4 * a]! - raw.bounds[4 * b]!,
  );
  const count = order.length;
  const bounds = new Float64Array(4 * count);
  const course = new Int32Array(count);
  const shapes = new Map<number, readonly Points[]>();
  const tree = count > 0 ? new Flatbush(count) : null;
  const starts: number[] = [];
  order.forEach((from, i) => {
    const box = raw.bounds.slice(4 * from, 4 * from + 4);
    bounds.set(box, 4 * i);
    course[i] = raw.course[from]!;
    if (i === 0 || course[i] !== course[i - 1]) starts.push(i);
    const rings = raw.shapes.get(from);
    if (rings) shapes.set(i, rings);
    tree!.add(box[0]!, box[1]!, box[2], box[3]);
  });
  tree?.finish();
  return { count, bounds, course, shapes, courseStart: Int32Array.from([...starts, count]), tree };
}

/** The piece at a place, or -1. */
export function pieceAt(index: PieceIndex, { x, y }: Place): number {
  const near = index.tree?.search(x, y, x, y) ?? [];
  return near.find((i) => !index.shapes.has(i) || isInside(index.shapes.get(i)!, x, y)) ?? -1;
}

/** The rings of a piece. */
export function pieceRings(index: PieceIndex, i: number): readonly Points[] {
  const shape = index.shapes.get(i);
  if (shape) return shape;
  const b = index.bounds;
  const [left, top, right, bottom] = [b[4 * i]!, b[4 * i + 1]!, b[4 * i + 2]!, b[4 * i + 3]!];
  return [[left, bottom, right, bottom, right, top, left, top]];
}

/** A place inside a piece: the middle of the widest stretch at about half of its height. */
export function placeInside(index: PieceIndex, i: number): Place {
  const b = index.bounds;
  const [left, top, right, bottom] = [b[4 * i]!, b[4 * i + 1]!, b[4 * i + 2]!, b[4 * i + 3]!];
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const rings = index.shapes.get(i);
  if (!rings || isInside(rings, middle.x, middle.y)) return middle;
  // Off the half, where corners like to be.
  const y = top + 0.4871 * (bottom - top);
  const xs = rings.flatMap((ring) => crossings(ring, y)).sort((a, b) => a - b);
  let best = { from: left, to: left };
  for (let k = 0; k + 1 < xs.length; k += 2) {
    if (xs[k + 1]! - xs[k]! > best.to - best.from) best = { from: xs[k]!, to: xs[k + 1]! };
  }
  return { x: (best.from + best.to) / 2, y };
}

/** Whether a place is inside the rings: outer first, those after it are cut out. */
export function isInside(rings: readonly Points[], x: number, y: number): boolean {
  const left = rings.reduce((sum, ring) => sum + crossings(ring, y).filter((c) => c < x).length, 0);
  return left % 2 === 1;
}

function crossings(ring: Points, y: number): number[] {
  const xs: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const [x0, y0, x1, y1] = [ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!];
    if (y0 > y !== y1 > y) xs.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
  }
  return xs;
}

interface RawPieces {
  readonly bounds: number[];
  readonly course: number[];
  readonly shapes: Map<number, readonly Points[]>;
}

function gather(wall: WallScene): RawPieces {
  const raw: RawPieces = { bounds: [], course: [], shapes: new Map() };
  for (const { course, boxes, shapes } of wall.pieces) {
    for (const value of boxes) raw.bounds.push(value);
    for (let i = 0; i < boxes.length; i += 4) raw.course.push(course);
    for (const rings of shapes) {
      const { left, top, right, bottom } = boundsOfPoints(rings[0]!);
      raw.shapes.set(raw.course.length, rings);
      raw.bounds.push(left, top, right, bottom);
      raw.course.push(course);
    }
  }
  return raw;
}
