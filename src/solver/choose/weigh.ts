import type { Nm } from "../../measure/index.js";
import { overlaps } from "../box.js";
import { firstPast } from "../lattice.js";
import type { Score } from "../solved.js";
import { imbalanceAcross, imbalanceUp } from "./balance.js";
import { addCells, addCutCells, addPartCells, type Cells, type Sure, type Tally } from "./cell.js";
import { compareScores } from "./compare.js";
import type { Effort } from "./effort.js";
import type { Field } from "./field.js";
import { type Run, runsOf } from "./runs.js";

/** The columns of each phase of the bond, for one start across. */
export type Columns = readonly (readonly Run[])[];

export function columnsOf(field: Field, x: Nm): Columns {
  return field.shifts.map((shift) => runsOf(field.across, x + shift));
}

/** A start: a tile's left edge in course 1, and the bottom of a course. */
export interface Start {
  readonly x: Nm;
  readonly columns: Columns;
  readonly y: Nm;
  readonly courses: readonly Run[];
}

export function startOf(field: Field, x: Nm, y: Nm): Start {
  return { x, columns: columnsOf(field, x), y, courses: runsOf(field.up, y) };
}

/**
 * The score of a start, the same as `scoreOf` counts over the laid pieces; null as soon as it is
 * sure to be worse than `atMost`.
 */
export function weigh(
  field: Field,
  start: Start,
  effort: Effort,
  atMost: Score | null,
): Score | null {
  return new Weighing(field, start, effort, atMost, addCutCells).score();
}

/**
 * The score of a start by what is worked out of its pieces without cutting any: `weigh` comes to the
 * same but where a piece is a nanometre wide. null as soon as it is sure to be worse than `atMost`.
 */
export function weighQuickly(
  field: Field,
  start: Start,
  effort: Effort,
  atMost: Score | null,
): Score | null {
  return new Weighing(field, start, effort, atMost, addPartCells).score();
}

/** The number of the row that is course 1: the lowest with a piece. */
export function firstRow(field: Field, start: Start, effort: Effort): number {
  return new Weighing(field, start, effort, null, addPartCells).firstRow();
}

/** How pieces are told that plain comparison doesn't tell. */
type Telling = (field: Field, cells: Cells, tally: Tally, effort: Effort) => void;

class Weighing {
  private readonly tally: Tally = { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
  /** Tiles that take real cutting: looked at last, when the rest doesn't settle it. */
  private readonly put: (Cells & { readonly sure: Sure })[] = [];
  /** What they come to at least. */
  private putSlivers = 0;
  private putCuts = 0;
  /** The row of course 1: the lowest with a piece. */
  private first = 0;
  private readonly imbalance: Nm;
  private readonly areRowsAlike: boolean;

  constructor(
    private readonly field: Field,
    private readonly start: Start,
    private readonly effort: Effort,
    private readonly atMost: Score | null,
    private readonly telling: Telling,
  ) {
    const { balance } = field;
    this.areRowsAlike = field.across.slopes.length + field.circles.length === 0;
    this.imbalance = imbalanceAcross(balance, start.x) + imbalanceUp(balance, start.y);
  }

  score(): Score | null {
    for (const run of this.start.courses) {
      this.addRows(run);
      if (this.isWorse()) return null;
    }
    for (const cells of this.put) {
      this.putSlivers -= cells.sure.slivers * cells.many;
      this.putCuts -= cells.sure.cuts * cells.many;
      this.cut(cells);
      if (this.isWorse()) return null;
    }
    const score = this.soFar();
    return score.tiles === 0 ? { ...score, imbalance: 0 } : score;
  }

  firstRow(): number {
    for (const run of this.start.courses) {
      for (let row = run.from; row < run.to; row++) {
        this.addCourses(row, 1, 0, run.sloped);
        if (!this.isEmpty()) return row;
      }
    }
    return 0;
  }

  private soFar(): Score {
    const { lay, joint } = this.field.ground;
    const { underHalf, tiles } = this.tally;
    const cuts = this.tally.cuts + this.putCuts;
    const slivers = this.tally.slivers + this.putSlivers;
    return {
      slivers,
      underHalf,
      imbalance: this.imbalance,
      cuts,
      tiles,
      jointOver: joint - lay.joint.min,
    };
  }

  private isWorse(): boolean {
    if (!this.atMost || this.isEmpty()) return false;
    return compareScores(this.soFar(), this.atMost) > 0;
  }

  private isEmpty(): boolean {
    return this.tally.tiles === 0;
  }

  private addRows(run: Run): void {
    let row = run.from;
    while (this.isEmpty() && row < run.to) {
      this.first = row;
      this.addCourses(row, 1, 0, run.sloped);
      row = this.isEmpty() && !run.sloped && this.areRowsAlike ? run.to : row + 1;
    }
    const phases = this.field.shifts.length;
    for (let i = 0; i < phases && row + i < run.to; i++) {
      const many = Math.ceil((run.to - row - i) / phases);
      this.addCourses(row + i, many, (row + i - this.first) % phases, run.sloped);
    }
  }

  /** Adds `many` courses of one phase, a bond's repeat apart from each other. */
  private addCourses(row: number, many: number, phase: number, sloped: boolean): void {
    const { across, up, shifts } = this.field;
    const origin = this.start.x + shifts[phase]!;
    for (const run of this.start.columns[phase]!) {
      const each = sloped || run.sloped || this.meetsCircle(origin, run.from, row);
      const rows = each ? many : 1;
      const columns = each ? run.to - run.from : 1;
      const alike = each ? 1 : many * (run.to - run.from);
      for (let r = 0; r < rows; r++) {
        const bottom = this.start.y + (row + r * shifts.length) * up.module;
        for (let c = 0; c < columns; c++) {
          const left = origin + (run.from + c) * across.module;
          this.add({ left, bottom, many: alike });
        }
      }
    }
  }

  /** Tiles that lie wholly within a circle's bounds are not alike either. */
  private meetsCircle(origin: Nm, column: number, row: number): boolean {
    const { across, up, circles } = this.field;
    if (circles.length === 0) return false;
    const left = origin + column * across.module;
    const bottom = this.start.y + row * up.module;
    const tile = { left, bottom, right: left + across.face, top: bottom + up.face };
    return circles.some((circle) => overlaps(tile, circle));
  }

  private add(cells: Cells): void {
    this.effort.cells += 1 + this.field.obstacles.length / 8;
    const sure = addCells(this.field, cells, this.tally);
    if (sure === null) return;
    // Which course is the first must be known at once.
    if (this.isEmpty()) {
      this.cut(cells);
      return;
    }
    this.put.push({ ...cells, sure });
    this.putSlivers += sure.slivers * cells.many;
    this.putCuts += sure.cuts * cells.many;
  }

  private cut(cells: Cells): void {
    this.telling(this.field, cells, this.tally, this.effort);
  }
}

/** The bottom of the lowest course that may have a piece, for a lattice with a course at `y`. */
export function lowestCourse(field: Field, y: Nm): Nm {
  const { face, module, low } = field.up;
  return y + firstPast(y, face, module, low) * module;
}
