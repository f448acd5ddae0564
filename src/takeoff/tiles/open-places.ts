/**
 * Which of a row of numbered places are open, and the nearest open ones to any place: a binary indexed
 * tree of counts (Fenwick, "A new data structure for cumulative frequency tables", 1994), so that a
 * hundred thousand hand-overs stay cheap.
 */
export class OpenPlaces {
  private readonly counts: Int32Array;
  private readonly top: number;

  constructor(places: number) {
    this.counts = new Int32Array(places + 1);
    this.top = places === 0 ? 0 : 2 ** Math.floor(Math.log2(places));
  }

  open(place: number): void {
    this.change(place, 1);
  }

  close(place: number): void {
    this.change(place, -1);
  }

  /** The last open place before this one, or null. */
  before(place: number): number | null {
    const below = this.countBelow(place);
    return below === 0 ? null : this.nth(below);
  }

  /** This place or the first open one behind it, or null. */
  from(place: number): number | null {
    const below = this.countBelow(place);
    return below === this.countBelow(this.counts.length - 1) ? null : this.nth(below + 1);
  }

  private change(place: number, by: number): void {
    for (let k = place + 1; k < this.counts.length; k += k & -k) this.counts[k]! += by;
  }

  private countBelow(place: number): number {
    let sum = 0;
    for (let k = place; k > 0; k -= k & -k) sum += this.counts[k]!;
    return sum;
  }

  /** The place of the n-th open one, from 1. */
  private nth(n: number): number {
    let at = 0;
    let left = n;
    for (let step = this.top; step >= 1; step /= 2) {
      const next = at + step;
      if (next < this.counts.length && this.counts[next]! < left) {
        left -= this.counts[next]!;
        at = next;
      }
    }
    return at;
  }
}
