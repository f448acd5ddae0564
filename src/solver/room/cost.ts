/**
 * What a layout costs, compared number by number from the first: whether it lays nothing, what each
 * wish misses in its rank, then the measures of a score. Costs of walls add up.
 */
export type Cost = readonly number[];

export function sumOf(a: Cost, b: Cost): Cost {
  const sum: number[] = [];
  for (let i = 0; i < a.length; i++) sum.push(a[i]! + b[i]!);
  return sum;
}

/** Negative when `a` is the better. */
export function compareCosts(a: Cost, b: Cost): number {
  for (let i = 0; i < a.length; i++) {
    const apart = a[i]! - b[i]!;
    if (apart !== 0) return apart;
  }
  return 0;
}

/** The lesser of two costs, where there are any. */
export function lesserOf(a: Cost | null, b: Cost | null): Cost | null {
  if (!a || !b) return a ?? b;
  return compareCosts(b, a) < 0 ? b : a;
}

export function lessBy(a: Cost, b: Cost): Cost {
  const rest: number[] = [];
  for (let i = 0; i < a.length; i++) rest.push(a[i]! - b[i]!);
  return rest;
}

/** Whether two costs together are less than a third; without making their sum. */
export function isUnder(a: Cost, b: Cost, most: Cost): boolean {
  for (let i = 0; i < a.length; i++) {
    const apart = a[i]! + b[i]! - most[i]!;
    if (apart !== 0) return apart < 0;
  }
  return false;
}

/** Whether two costs together are more than a third; without making their sum. */
export function isOver(a: Cost, b: Cost, most: Cost): boolean {
  for (let i = 0; i < a.length; i++) {
    const apart = a[i]! + b[i]! - most[i]!;
    if (apart !== 0) return apart > 0;
  }
  return false;
}
