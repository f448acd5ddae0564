/**
 * The mark of each wall in labels, in the order of the names: the shortest beginning of its name that
 * no other wall's name has, in capitals. Marks come from the names alone, so that they stay the same
 * whatever else of the plan changes, and in whatever order it is written.
 */
export function wallMarks(names: readonly string[]): string[] {
  const capitals = names.map((name) => name.toUpperCase());
  return names.map((name, i) => {
    const mine = capitals[i]!;
    const others = capitals.filter((_, j) => j !== i);
    // Names that differ in capitals alone are told apart by being written as they are.
    if (others.includes(mine)) return name;
    for (let length = 1; length < mine.length; length++) {
      const mark = mine.slice(0, length);
      if (!others.some((other) => other.startsWith(mark))) return mark;
    }
    return mine;
  });
}
