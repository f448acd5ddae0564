/** Names longer than this are compared no further: nobody mistypes such. */
const LONGEST_NAME = 40;
/** In a plan with more names than this a guess would cost more time than it saves. */
const MOST_CANDIDATES = 500;

/**
 * The candidate that a mistyped word most likely meant: one slip away (a letter missing, extra,
 * wrong, or two swapped), two in a word of five letters or more. null when none is that near.
 */
export function nearest(word: string, candidates: Iterable<string>): string | null {
  const most = word.length >= 5 ? 2 : 1;
  let best: string | null = null;
  let bestSlips = most + 1;
  let tried = 0;
  for (const candidate of candidates) {
    if (++tried > MOST_CANDIDATES) break;
    const slips = slipsBetween(word.toLowerCase(), candidate.toLowerCase(), bestSlips - 1);
    // A word of one or two letters is one slip from any other, which is no likeness.
    if (slips < bestSlips && slips < Math.max(word.length, candidate.length) - 1) {
      best = candidate;
      bestSlips = slips;
    }
  }
  return best;
}

/** `; did you mean X?`, or nothing. */
export function didYouMean(word: string, candidates: Iterable<string>): string {
  const guess = nearest(word, candidates);
  return guess === null ? "" : `; did you mean \`${guess}\`?`;
}

/** The fewest slips that turn `a` into `b`, or `most + 1` when it takes more than `most`. */
function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  if (a.length > LONGEST_NAME || b.length > LONGEST_NAME) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const wrong = a[i - 1] === b[j - 1] ? 0 : 1;
      let slips = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + wrong);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) slips = Math.min(slips, beforeLast[j - 2]! + 1);
      row.push(slips);
    }
    beforeLast = last;
    last = row;
  }
  return Math.min(last[b.length]!, most + 1);
}
