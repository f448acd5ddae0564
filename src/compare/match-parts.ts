/** A part before and the same part after, by their places in the lists; -1 where there is none. */
export interface Match {
  readonly before: number;
  readonly after: number;
}

/** How parts of a list are recognised again. */
export interface Traits<T> {
  /** Parts of one name are the same. */
  readonly nameOf: (part: T) => string;
  /** How much of what two parts say is the same; below `enough` they are different parts. */
  readonly likeness: (before: T, after: T) => number;
  readonly enough: number;
}

/**
 * Matches parts by name, then those that are left by likeness, the most alike first: so a renamed
 * part is the same part. In the order of the list after, with those that are gone at their place.
 * The way back gives the same matches.
 */
export function matchParts<T>(
  before: readonly T[],
  after: readonly T[],
  traits: Traits<T>,
): readonly Match[] {
  const twinOf = byName(before, after, traits.nameOf);
  const left = before.map((_, i) => i).filter((i) => !twinOf.has(i));
  const taken = new Set(twinOf.values());
  const right = after.map((_, j) => j).filter((j) => !taken.has(j));
  for (const { i, j } of likePairs(before, after, left, right, traits)) {
    if (twinOf.has(i) || taken.has(j)) continue;
    twinOf.set(i, j);
    taken.add(j);
  }
  return inOrder(before.length, after.length, twinOf);
}

function byName<T>(
  before: readonly T[],
  after: readonly T[],
  nameOf: (part: T) => string,
): Map<number, number> {
  const places = new Map(after.map((part, j) => [nameOf(part), j]));
  const twinOf = new Map<number, number>();
  before.forEach((part, i) => {
    const j = places.get(nameOf(part));
    if (j === undefined) return;
    twinOf.set(i, j);
    places.delete(nameOf(part));
  });
  return twinOf;
}

/** Pairs that are alike enough, best first; equals in an order that is the same both ways. */
function likePairs<T>(
  before: readonly T[],
  after: readonly T[],
  left: readonly number[],
  right: readonly number[],
  { likeness, enough }: Traits<T>,
): readonly { i: number; j: number }[] {
  return left
    .flatMap((i, n) =>
      right.map((j, m) => {
        const score = likeness(before[i]!, after[j]!);
        return { i, j, score, apart: Math.abs(n - m), sum: n + m };
      }),
    )
    .filter(({ score }) => score >= enough)
    .sort((a, b) => b.score - a.score || a.apart - b.apart || a.sum - b.sum);
}

function inOrder(before: number, after: number, twinOf: ReadonlyMap<number, number>): Match[] {
  const twinBack = new Map([...twinOf].map(([i, j]) => [j, i]));
  const matches: Match[] = [];
  let next = 0;
  const takeGone = (upTo: number) => {
    for (; next < upTo; next++) if (!twinOf.has(next)) matches.push({ before: next, after: -1 });
  };
  for (let j = 0; j < after; j++) {
    const i = twinBack.get(j) ?? -1;
    takeGone(i);
    matches.push({ before: i, after: j });
  }
  takeGone(before);
  return matches;
}
