import type { Nm } from "../../measure/index.js";
import { overlaps } from "../box.js";
import type { Score } from "../solved.js";
import type { Tally } from "./cell.js";
import { compareScores } from "./compare.js";
import type { Field, Reach } from "./field.js";
import { type EdgeSpan, runsOver, type TileRun } from "./rows-over.js";
import { movedSpan, type Span, type StartBox } from "./start-box.js";
import { addLeast, isSliverIfAny, type Place } from "./tile-least.js";
import type { Effort } from "./effort.js";

/** What every start of a box costs at least. */
export interface Least {
  readonly score: Score;
  /** What its pieces differ by: nothing, where all its starts have the same. */
  readonly differs: Differs;
  /** What is known of each part of the box, too; null where it is not even sure which course is the first. */
  readonly known: Known | null;
}

/** Tiles whose pieces are the same at all starts of a box, and those of which that is not sure. */
export interface Known {
  readonly settled: Tally;
  readonly loose: readonly Tiles[];
}

/** Like tiles: the place of one of them in the lattice, and how many there are. */
interface Tiles {
  readonly phase: number;
  readonly row: number;
  readonly column: number;
  readonly many: number;
}

/** Whether pieces differ by the start across, and by the start up. */
export interface Differs {
  across: boolean;
  up: boolean;
}

/** So many tiles tell in which direction a box is best halved. */
const MOST_COMPARED = 6;

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

/** What is given of a box of starts. */
export interface Given {
  readonly edges: Edges;
  /** The least that its starts are out of balance. */
  readonly imbalance: Nm;
  /** The best known start's score; null where what the box costs is asked for in any case. */
  readonly best: Score | null;
  readonly effort: Effort;
  /** What a box came to that holds this one. */
  readonly known: Known | null;
}

/** What a box of starts costs at least; null as soon as it is sure to be no better than the best. */
export function leastOf(box: StartBox, given: Given): Least | null {
  return new BoxLeast(box, given).least(given.known);
}

class BoxLeast {
  private readonly imbalance: Nm;
  private readonly jointOver: Nm;
  private readonly phases: number;
  private readonly edges: Edges;
  private readonly best: Score | null;
  private readonly effort: Effort;
  private readonly columns: (TileRun[] | undefined)[] = [];
  private rows: TileRun[] = [];
  private readonly differs: Differs = { across: false, up: false };

  constructor(
    private readonly box: StartBox,
    { edges, imbalance, best, effort }: Given,
  ) {
    const { lay, joint } = box.field.ground;
    this.jointOver = joint - lay.joint.min;
    this.phases = box.field.shifts.length;
    [this.edges, this.imbalance, this.best, this.effort] = [edges, imbalance, best, effort];
  }

  least(known: Known | null): Least | null {
    const { field, y0, y1 } = this.box;
    if (this.isBeaten(nothing())) return null;
    if (known) return this.leastWith(known);
    this.rows = runsOver(field.up, { from: y0, to: y1 }, this.edges.up);
    // Course 1 is the lowest with a piece; where that is not sure, the best of all cases counts.
    let least: Score | null = null;
    let cases = 0;
    let found: Known | null = null;
    for (let i = 0; i < this.rows.length; i++) {
      const has = this.hasPieces(this.rows[i]!);
      if (has === "none") continue;
      cases++;
      const count = this.countFrom(i, has === "maybe" && this.isSliverIfAny(this.rows[i]!));
      if (count) {
        const score = this.scoreOf(count.all);
        if (!least || compareScores(score, least) < 0) least = score;
        if (has === "some" && cases === 1) found = count;
      }
      if (has === "some") break;
    }
    if (!least) return null;
    if (cases > 1) this.differs.up = true;
    return { score: least, differs: this.differs, known: found };
  }

  private leastWith({ settled, loose }: Known): Least | null {
    const count = new Count(settled);
    for (const tiles of loose) {
      this.addTiles(tiles, count);
      if (this.isBeaten(count.all)) return null;
    }
    return { score: this.scoreOf(count.all), differs: this.differs, known: count };
  }

  /** Whether a row has pieces when it is course 1. */
  private hasPieces(row: TileRun): "none" | "maybe" | "some" {
    const tally = nothing();
    let settled = true;
    for (const run of this.columnsOf(0)) {
      for (const tiles of this.tilesOf(row, row.first, 1, 0, run)) {
        settled = this.addTo(tally, tiles) && settled;
        if (tally.tiles > 0) return "some";
      }
    }
    return settled ? "none" : "maybe";
  }

  /** Whether a row that may have pieces has a sliver among them if it has any. */
  private isSliverIfAny(row: TileRun): boolean {
    return this.columnsOf(0).every((run) => {
      for (let c = 0; c < run.many; c++) {
        const tiles = { phase: 0, row: row.first, column: run.first + c, many: 1 };
        if (isSliverIfAny(this.box.field, this.placeOf(tiles), this.effort) === false) return false;
      }
      return true;
    });
  }

  /** Counts all rows from this one on, which is course 1; null when that is beaten. */
  private countFrom(index: number, hasSliver: boolean): Count | null {
    const { phases } = this;
    const putOff: Tiles[] = [];
    // Course 1 has a piece. None is sure here, so this one is not counted below.
    const count = new Count(
      hasSliver ? { ...nothing(), slivers: 1, cuts: 1, tiles: 1 } : nothing(),
    );
    const start = this.rows[index]!.first;
    for (const row of this.rows.slice(index)) {
      for (let i = 0; i < phases && i < row.many; i++) {
        const many = Math.ceil((row.many - i) / phases);
        const first = row.first + i;
        const phase = (first - start) % phases;
        for (const run of this.columnsOf(phase)) {
          for (const tiles of this.tilesOf(row, first, many, phase, run)) {
            if (this.meetsCircle(this.placeOf(tiles))) putOff.push(tiles);
            else this.addTiles(tiles, count);
          }
        }
      }
      if (this.isBeaten(count.all)) return null;
    }
    // What takes most work comes last, when the rest doesn't tell.
    for (const tiles of putOff) {
      this.addTiles(tiles, count);
      if (this.isBeaten(count.all)) return null;
    }
    return count;
  }

  /** The tiles of a run of columns in like rows, a bond's repeat apart: one by one where they may differ. */
  private tilesOf(row: TileRun, first: number, many: number, phase: number, run: TileRun): Tiles[] {
    const all = { phase, row: first, column: run.first, many: many * run.many };
    const differ = row.slopes || run.slopes || this.meetsCircle(this.placeOf(all));
    if (!differ || all.many === 1) return [all];
    const tiles: Tiles[] = [];
    for (let r = 0; r < many; r++) {
      for (let c = 0; c < run.many; c++) {
        tiles.push({ phase, row: first + r * this.phases, column: run.first + c, many: 1 });
      }
    }
    return tiles;
  }

  private addTiles(tiles: Tiles, count: Count): void {
    const one = nothing();
    const settled = this.addTo(one, tiles);
    count.add(one, settled ? null : tiles);
    if (!settled && count.loose.length <= MOST_COMPARED) this.findDifference(tiles);
  }

  private addTo(tally: Tally, tiles: Tiles): boolean {
    return addLeast(this.box.field, this.placeOf(tiles), tally, this.effort);
  }

  /** Finds out in which direction tiles' pieces differ already; in both, where in neither alone. */
  private findDifference(tiles: Tiles): void {
    const { left, bottom } = this.placeOf(tiles);
    const isSame = (place: Omit<Place, "many">) =>
      addLeast(this.box.field, { ...place, many: 1 }, nothing(), this.effort);
    const byAcross = !isSame({ left, bottom: { from: bottom.from, to: bottom.from } });
    const byUp = !isSame({ left: { from: left.from, to: left.from }, bottom });
    this.differs.across ||= byAcross || !byUp;
    this.differs.up ||= byUp || !byAcross;
  }

  private placeOf({ phase, row, column, many }: Tiles): Place {
    const { field, y0, y1 } = this.box;
    return {
      left: movedSpan(this.originOf(phase), column * field.across.module),
      bottom: movedSpan({ from: y0, to: y1 }, row * field.up.module),
      many,
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
    // Where nothing is laid a start is worse than any other, so there is one tile at least.
    return {
      ...tally,
      tiles: Math.max(1, tally.tiles),
      imbalance: this.imbalance,
      jointOver: this.jointOver,
    };
  }

  /** The same as comparing `scoreOf`, which would make a score for each tile that is counted. */
  private isBeaten({ slivers, underHalf, cuts, tiles }: Tally): boolean {
    const { best, imbalance } = this;
    if (!best || best.tiles === 0) return false;
    const difference =
      slivers - best.slivers ||
      underHalf - best.underHalf ||
      imbalance - best.imbalance ||
      cuts - best.cuts ||
      Math.max(1, tiles) - best.tiles ||
      this.jointOver - best.jointOver;
    return difference >= 0;
  }
}

/** Adds up tiles, and keeps those apart that are not settled. */
class Count implements Known {
  readonly settled: Tally;
  readonly loose: Tiles[] = [];
  readonly all: Tally;

  constructor(settled: Tally) {
    this.settled = { ...settled };
    this.all = { ...settled };
  }

  add(tally: Tally, loose: Tiles | null): void {
    addTally(this.all, tally);
    if (loose) this.loose.push(loose);
    else addTally(this.settled, tally);
  }
}

function addTally(to: Tally, { slivers, underHalf, cuts, tiles }: Tally): void {
  to.slivers += slivers;
  to.underHalf += underHalf;
  to.cuts += cuts;
  to.tiles += tiles;
}

function nothing(): Tally {
  return { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
}
