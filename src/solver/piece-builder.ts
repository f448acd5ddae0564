import type { Box } from "./box.js";
import type { PieceTable, Visible } from "./piece-table.js";
import type { Shape } from "./shape.js";

/** Fills a piece table course by course; grows by doubling. */
export class PieceBuilder {
  count = 0;
  private bounds: Float64Array;
  private course: Int32Array;
  private column: Int32Array;
  private part: Uint8Array;
  private cut: Uint8Array;
  private readonly courseStart: number[] = [];
  private readonly shapes = new Map<number, Shape>();
  private readonly visible = new Map<number, Visible>();

  constructor(private capacity: number) {
    this.bounds = new Float64Array(4 * capacity);
    this.course = new Int32Array(capacity);
    this.column = new Int32Array(capacity);
    this.part = new Uint8Array(capacity);
    this.cut = new Uint8Array(capacity);
  }

  /** Forgets the courses begun so far; none of them may have a piece. */
  restart(): void {
    this.courseStart.length = 0;
  }

  beginCourse(): void {
    this.courseStart.push(this.count);
  }

  /** Adds `many` rectangles of one course side by side, uncut or cut alike in height. */
  addRow(row: Row): void {
    this.makeRoom(row.many);
    const { bounds, course, column, cut } = this;
    let left = row.left;
    for (let k = 0, i = this.count; k < row.many; k++, i++, left += row.module) {
      const at = 4 * i;
      bounds[at] = left;
      bounds[at + 1] = row.bottom;
      bounds[at + 2] = left + row.width;
      bounds[at + 3] = row.top;
      course[i] = row.course;
      column[i] = row.column + k;
      cut[i] = row.cut;
    }
    this.count += row.many;
  }

  add(piece: BuiltPiece): void {
    this.makeRoom(1);
    const i = this.count++;
    const { bounds } = this;
    bounds[4 * i] = piece.bounds.left;
    bounds[4 * i + 1] = piece.bounds.bottom;
    bounds[4 * i + 2] = piece.bounds.right;
    bounds[4 * i + 3] = piece.bounds.top;
    this.course[i] = piece.course;
    this.column[i] = piece.column;
    this.part[i] = Math.min(piece.part, 255);
    this.cut[i] = piece.cut;
    if (piece.shape) this.shapes.set(i, piece.shape);
    if (piece.visible) this.visible.set(i, piece.visible);
  }

  /** The table, without empty courses at its end. */
  build(): PieceTable {
    const { count } = this;
    while (this.courseStart.length > 0 && this.courseStart.at(-1) === count) this.courseStart.pop();
    return {
      count,
      bounds: this.bounds.subarray(0, 4 * count),
      course: this.course.subarray(0, count),
      column: this.column.subarray(0, count),
      part: this.part.subarray(0, count),
      cut: this.cut.subarray(0, count),
      courseStart: Int32Array.from([...this.courseStart, count]),
      shapes: this.shapes,
      visible: this.visible,
    };
  }

  private makeRoom(more: number): void {
    if (this.count + more <= this.capacity) return;
    this.capacity = Math.max(2 * this.capacity, this.count + more);
    this.bounds = widened(this.bounds, new Float64Array(4 * this.capacity));
    this.course = widened(this.course, new Int32Array(this.capacity));
    this.column = widened(this.column, new Int32Array(this.capacity));
    this.part = widened(this.part, new Uint8Array(this.capacity));
    this.cut = widened(this.cut, new Uint8Array(this.capacity));
  }
}

export interface Row {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly top: number;
  readonly module: number;
  readonly many: number;
  readonly course: number;
  readonly column: number;
  readonly cut: number;
}

export interface BuiltPiece {
  readonly bounds: Box;
  readonly course: number;
  readonly column: number;
  readonly part: number;
  readonly cut: number;
  readonly shape: Shape | null;
  /** null when the whole piece is seen. */
  readonly visible: Visible | null;
}

function widened<T extends Float64Array | Int32Array | Uint8Array>(from: T, to: T): T {
  to.set(from);
  return to;
}
