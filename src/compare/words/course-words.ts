/** More courses than these are counted. */
const COURSES_NAMED = 6;

/** `in course 3`, `in courses 1 to 8`, `in every other course from 1 to 31`, `in courses 1 and 5`. */
export function courseWords(courses: readonly number[]): string {
  const order = [...courses].sort((a, b) => a - b);
  const [first, last] = [order[0]!, order.at(-1)!];
  if (order.length === 1) return `in course ${first}`;
  const step = order[1]! - first;
  const even = order.every((course, i) => course === first + i * step);
  if (even && step === 1 && order.length > 2) return `in courses ${first} to ${last}`;
  if (even && step === 2 && order.length > 2) {
    return `in every other course from ${first} to ${last}`;
  }
  if (order.length > COURSES_NAMED) return `in ${order.length} courses from ${first} to ${last}`;
  return `in courses ${order.slice(0, -1).join(", ")} and ${last}`;
}

/** `1 to 3, 5`. */
export function numberRuns(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last?.[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)).join(", ");
}
