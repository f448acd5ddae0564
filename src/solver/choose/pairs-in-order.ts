import type { Bound } from "./bounds.js";
import { LeastFirst } from "./least-first.js";

interface Bounded {
  readonly bound: Bound;
}

/** A start across, or several, with one up, and what the pair costs at least. */
export interface BoundedPair<X, Y> extends Bounded {
  readonly x: X;
  readonly y: Y;
}

/** All pairs of two lists, each best bound first, by what they cost at least; worked out as they are asked for. */
export function* pairsInOrder<X extends Bounded, Y extends Bounded>(
  across: readonly X[],
  up: readonly Y[],
): Generator<BoundedPair<X, Y>> {
  const open = new LeastFirst<BoundedPair<X, Y> & { readonly i: number; readonly j: number }>(
    (a, b) => compareBounds(a.bound, b.bound) || a.i - b.i,
  );
  const add = (i: number, j: number) => {
    const [x, y] = [across[i], up[j]];
    if (x && y) open.push({ x, y, i, j, bound: sumOf(x.bound, y.bound) });
  };
  add(0, 0);
  for (let pair = open.pop(); pair; pair = open.pop()) {
    yield pair;
    if (pair.j === 0) add(pair.i + 1, 0);
    add(pair.i, pair.j + 1);
  }
}

/** What costs no less than `a` and `b`, of which no piece is the same. */
export function sumOf(a: Bound, b: Bound): Bound {
  return {
    slivers: a.slivers + b.slivers,
    underHalf: a.underHalf + b.underHalf,
    imbalance: a.imbalance + b.imbalance,
  };
}

export function compareBounds(a: Bound, b: Bound): number {
  return a.slivers - b.slivers || a.underHalf - b.underHalf || a.imbalance - b.imbalance;
}
