import type { Nm } from "../../measure/index.js";

/** A cut length of trim. */
export interface CutLength {
  readonly length: Nm;
  /** Factory ends that have to stay: one where it meets the next length of its run, none at corners. */
  readonly ends: 0 | 1;
}

/** What a trim is cut from. */
export interface TrimStock {
  readonly along: Nm;
  readonly kerf: Nm;
}

/** A whole trim has two factory ends. */
const ENDS = 2;

/** So many ways to fill a trim are tried at most. Where they don't do, the best way found is told. */
const MOST_TRIED = 20_000;

/**
 * The fewest trims that cut lengths come from: those in one trim, with a kerf between each two, are no
 * longer than it, and no more of them need a factory end than it has. Exact where all need one (they go by
 * pairs), else within the effort above.
 */
export function trimsFor(lengths: readonly CutLength[], stock: TrimStock): number {
  const sorted = [...lengths].sort((a, b) => b.length - a.length || b.ends - a.ends);
  if (sorted.every(({ ends }) => ends === 1)) return pairUp(sorted, stock);
  const packed = packLargestFirst(sorted, stock);
  if (packed === leastTrims(sorted, stock)) return packed;
  return new TrimSearch(stock, packed).run(sorted);
}

/** Longest first: each takes the shortest one with it if that fits, and if it doesn't nothing does. */
function pairUp(sorted: readonly CutLength[], { along, kerf }: TrimStock): number {
  let trims = 0;
  let last = sorted.length - 1;
  for (let first = 0; first <= last; first++) {
    trims++;
    if (first < last && sorted[first]!.length + kerf + sorted[last]!.length <= along) last--;
  }
  return trims;
}

/** A trim while it is filled. */
interface Filled {
  room: Nm;
  ends: number;
}

/** Longest first, each where the least room is left. */
function packLargestFirst(sorted: readonly CutLength[], { along, kerf }: TrimStock): number {
  const trims: Filled[] = [];
  for (const { length, ends } of sorted) {
    const fits = trims.filter((trim) => trim.room >= length + kerf && trim.ends >= ends);
    const tightest = fits.sort((a, b) => a.room - b.room)[0];
    if (tightest) {
      tightest.room -= length + kerf;
      tightest.ends -= ends;
    } else trims.push({ room: along - length, ends: ENDS - ends });
  }
  return trims.length;
}

/** Fewer trims than this can't do: by length, by pieces of more than half, by factory ends. */
function leastTrims(lengths: readonly CutLength[], { along, kerf }: TrimStock): number {
  const needed = lengths.reduce((sum, { length }) => sum + length + kerf, 0);
  const large = lengths.filter(({ length }) => 2 * (length + kerf) > along + kerf).length;
  const ends = lengths.reduce((sum, each) => sum + each.ends, 0);
  return Math.max(Math.ceil(needed / (along + kerf)), large, Math.ceil(ends / ENDS));
}

/** Fills one trim after the other, each with the longest length that is left, in every way that could be best. */
class TrimSearch {
  private tried = 0;

  constructor(
    private readonly stock: TrimStock,
    private best: number,
  ) {}

  run(lengths: readonly CutLength[]): number {
    this.fill(lengths, 0);
    return this.best;
  }

  private fill(left: readonly CutLength[], used: number): void {
    if (left.length === 0) {
      this.best = Math.min(this.best, used);
      return;
    }
    if (used + leastTrims(left, this.stock) >= this.best || this.tried >= MOST_TRIED) return;
    const [longest, ...rest] = left;
    const trim = { room: this.stock.along - longest!.length, ends: ENDS - longest!.ends };
    this.add(rest, [], 0, trim, used + 1);
  }

  /** Adds lengths from `from` on to the trim that is being filled; those passed over are `skipped`. */
  private add(
    rest: readonly CutLength[],
    skipped: readonly CutLength[],
    from: number,
    trim: Filled,
    used: number,
  ): void {
    if (this.tried++ >= MOST_TRIED) return;
    const at = rest.findIndex((each, i) => i >= from && this.fits(each, trim));
    if (at < 0) {
      // One that was passed over and still fits would have done better in here.
      if (skipped.some((each) => this.fits(each, trim))) return;
      this.fill(rest, used);
      return;
    }
    const { length, ends } = rest[at]!;
    const without = [...rest.slice(0, at), ...rest.slice(at + 1)];
    const filled = { room: trim.room - length - this.stock.kerf, ends: trim.ends - ends };
    this.add(without, skipped, at, filled, used);
    const next = rest.findIndex(
      (each, i) => i > at && (each.length !== length || each.ends !== ends),
    );
    const past = next < 0 ? rest.length : next;
    this.add(rest, [...skipped, rest[at]!], past, trim, used);
  }

  private fits({ length, ends }: CutLength, trim: Filled): boolean {
    return length + this.stock.kerf <= trim.room && ends <= trim.ends;
  }
}
