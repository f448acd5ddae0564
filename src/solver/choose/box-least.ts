import type { Nm } from "../../measure/index.js";
import { overlaps } from "../box.js";
import type { Score } from "../solved.js";
import type { Tally } from "./cell.js";
import { compareScores } from "./compare.js";
import type { Field, Reach } from "./field.js";
import { leastImbalanceAcross, leastImbalanceUp } from "./imbalance-least.js";
import { type EdgeSpan, runsOver, type TileRun } from "./rows-over.js";
import { movedSpan, type Span, type StartBox } from "./start-box.js";
import { addLeast, isSliverIfAny, type Place } from "./tile-least.js";
import type { Effort } from "./weigh.js";

/** What every start of a box costs at least. */
export interface Least {
  readonly score: Score;
  /** What its pieces differ by: nothing, where all its starts have the same. */
  readonly differs: Differs;
}

/** Whether pieces differ by the start across, and by the start up. */
export interface Differs {
  across: boolean;
  up: boolean;
}

/** Where everything is that may cut a tile. */
export interface Edges {
  readonly across: readonly EdgeSpan[];
  readonly up: readonly EdgeSpan[];
}

/** The edges of a field's region, its openings and holes. */
export function edgesOf({ sides, across, obstacles }: Field): Edges {
  const reach = ({ low, high }: Reach) => ({ from: low, to: high, slopes: low < high });
  const edge = (at: Nm) => ({ from: at, to: at, slopes: false });
  return {
    across: [
      ...[sides.left, sides.right, across.seenFrom, across.seenTo].map(reach),
      ...obstacles.flatMap((box) => [edge(box.left), edge(box.right)]),
    ],
    up: [
      ...[sides.bottom, sides.top].map(reach),
      ...obstacles.flatMap((box) => [edge(box.bottom), edge(box.top)]),
    ],
  };
}

/** What a box of starts costs at least; null as soon as it is sure to be no better than `best`. */
export function leastOf(
  box: StartBox,
  edges: Edges,
  best: Score | null,
  effort: Effort,
): Least | null {
  return new BoxLeast(box, edges, best, effort).least();
}

/** A run of columns, of one phase of the bond, in `many` like rows from `first`. */
interface Cell {
  readonly row: TileRun;
  readonly first: number;
  readonly many: number;
  readonly phase: number;
  readonly run: TileRun;
}

class BoxLeast {
  private readonly imbalance: Nm;
  private readonly phases: number;
  private readonly columns: (TileRun[] | undefined)[] = [];
  private rows: TileRun[] = [];
  private readonly differs: Differs = { across: false, up: false };

  constructor(
    private readonly box: StartBox,
    private readonly edges: Edges,
    private readonly best: Score | null,
    private readonly effort: Effort,
  ) {
    this.phases = box.field.shifts.length;
    this.imbalance = leastImbalanceAcross(box) + leastImbalanceUp(box);
  }

  least(): Least | null {
    const { field, y0, y1 } = this.box;
    if (this.isBeaten(nothing())) return null;
    this.rows = runsOver(field.up, { from: y0, to: y1 }, this.edges.up);
    // Course 1 is the lowest with a piece; where that is not sure, the best of all cases counts.
    let least: Score | null = null;
    let cases = 0;
    for (let i = 0; i < this.rows.length; i++) {
      const has = this.hasPieces(this.rows[i]!);
      if (has === "none") continue;
      cases++;
      const tally = this.tallyFrom(i, has === "maybe" && this.isSliverIfAny(this.rows[i]!));
      if (tally) {
        const score = this.scoreOf(tally);
        if (!least || compareScores(score, least) < 0) least = score;
      }
      if (has === "some") break;
    }
    if (!least) return null;
    if (cases > 1) this.differs.up = true;
    return { score: least, differs: this.differs };
  }

  /** Whether a row has pieces when it is course 1. */
  private hasPieces(row: TileRun): "none" | "maybe" | "some" {
    const tally = nothing();
    let settled = true;
    for (const run of this.columnsOf(0)) {
      settled = this.addCell({ row, first: row.first, many: 1, phase: 0, run }, tally) && settled;
      if (tally.tiles > 0) return "some";
    }
    return settled ? "none" : "maybe";
  }

  /** Whether a row that may have pieces has a sliver among them if it has any. */
  private isSliverIfAny(row: TileRun): boolean {
    return this.columnsOf(0).every((run) => {
      const cell = { row, first: row.first, many: 1, phase: 0, run };
      for (let c = 0; c < run.many; c++) {
        this.effort.cells += 1;
        const place = this.placeOf(cell, row.first, run.first + c);
        if (isSliverIfAny(this.box.field, place) === false) return false;
      }
      return true;
    });
  }

  /** Counts all rows from this one on, which is course 1; null when that is beaten. */
  private tallyFrom(index: number, hasSliver: boolean): Tally | null {
    const { phases } = this;
    const putOff: Cell[] = [];
    const tally = nothing();
    // Course 1 has a piece. None is sure here, so this one is not counted below.
    if (hasSliver) Object.assign(tally, { slivers: 1, cuts: 1, tiles: 1 });
    const start = this.rows[index]!.first;
    for (const row of this.rows.slice(index)) {
      for (let i = 0; i < phases && i < row.many; i++) {
        const many = Math.ceil((row.many - i) / phases);
        const first = row.first + i;
        const phase = (first - start) % phases;
        for (const run of this.columnsOf(phase)) {
          const cell = { row, first, many, phase, run };
          if (this.meetsCircle(this.placeOf(cell, first, run.first))) putOff.push(cell);
          else if (!this.addCell(cell, tally)) this.findDifference(cell);
        }
      }
      if (this.isBeaten(tally)) return null;
    }
    // What takes most work comes last, when the rest doesn't tell.
    for (const cell of putOff) {
      if (!this.addCell(cell, tally)) this.findDifference(cell);
      if (this.isBeaten(tally)) return null;
    }
    return tally;
  }

  /** Adds the tiles of a run of columns in like rows, a bond's repeat apart. */
  private addCell(cell: Cell, tally: Tally): boolean {
    const { field } = this.box;
    const { row, first, many, run } = cell;
    const place = this.placeOf(cell, first, run.first);
    const all = many * run.many;
    this.effort.cells += 1;
    const differ = row.slopes || run.slopes || this.meetsCircle(place);
    if (!differ || all === 1) return addLeast(field, { ...place, many: all }, tally);
    this.effort.cells += all;
    let settled = true;
    for (let r = 0; r < many; r++) {
      for (let c = 0; c < run.many; c++) {
        const one = this.placeOf(cell, first + r * this.phases, run.first + c);
        settled = addLeast(field, one, tally) && settled;
      }
    }
    return settled;
  }

  /** Finds out in which direction a cell's pieces differ already; in both, where in neither alone. */
  private findDifference(cell: Cell): void {
    const { left, bottom } = this.placeOf(cell, cell.first, cell.run.first);
    const isSame = (place: Omit<Place, "many">) => {
      this.effort.cells += 1;
      return addLeast(this.box.field, { ...place, many: 1 }, nothing());
    };
    const byAcross = !isSame({ left, bottom: { from: bottom.from, to: bottom.from } });
    const byUp = !isSame({ left: { from: left.from, to: left.from }, bottom });
    this.differs.across ||= byAcross || !byUp;
    this.differs.up ||= byUp || !byAcross;
  }

  private placeOf({ phase }: Cell, row: number, column: number): Place {
    const { field, y0, y1 } = this.box;
    return {
      left: movedSpan(this.originOf(phase), column * field.across.module),
      bottom: movedSpan({ from: y0, to: y1 }, row * field.up.module),
      many: 1,
    };
  }

  private meetsCircle({ left, bottom }: Place): boolean {
    const { circles, across, up } = this.box.field;
    if (circles.length === 0) return false;
    const tile = {
      left: left.from,
      right: left.to + across.face,
      bottom: bottom.from,
      top: bottom.to + up.face,
    };
    return circles.some((circle) => overlaps(tile, circle));
  }

  private columnsOf(phase: number): TileRun[] {
    const { across } = this.box.field;
    return (this.columns[phase] ??= runsOver(across, this.originOf(phase), this.edges.across));
  }

  private originOf(phase: number): Span {
    const { field, x0, x1 } = this.box;
    return movedSpan({ from: x0, to: x1 }, field.shifts[phase]!);
  }

  private scoreOf(tally: Tally): Score {
    const { lay, joint } = this.box.field.ground;
    // Where nothing is laid a start is worse than any other, so there is one tile at least.
    return {
      ...tally,
      tiles: Math.max(1, tally.tiles),
      imbalance: this.imbalance,
      jointOver: joint - lay.joint.min,
    };
  }

  private isBeaten(tally: Tally): boolean {
    return this.best !== null && compareScores(this.scoreOf(tally), this.best) >= 0;
  }
}

function nothing(): Tally {
  return { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
}
