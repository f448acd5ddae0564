/** The name that a mistyped word most likely means, or null when none is near. */
export function nearest(word: string, names: readonly string[]): string | null {
  let best: string | null = null;
  let least = Math.floor(Math.max(word.length, 3) / 3) + 1;
  for (const name of names) {
    const distance = editDistance(word, name);
    if (distance < least) [best, least] = [name, distance];
  }
  return best;
}

/** How many letters have to be put in, taken out or changed to make one word of the other. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
