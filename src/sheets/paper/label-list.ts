/** Labels that go on evenly are told by their first and last where they are this many. */
const LEAST_RUN = 3;

const LABEL = /^(.*)-(\d+)-(\d+)$/;

interface Spot {
  readonly label: string;
  /** null for a further part of a tile, which is told by itself. */
  readonly place: {
    readonly wall: string;
    readonly course: number;
    readonly column: number;
  } | null;
}

/**
 * Labels in their order; neighbours in a course as `B-09-02 to B-09-12`, pieces at one place of evenly
 * spaced courses as `B-02-01 to B-32-01, every 2nd course`.
 */
export function labelList(labels: readonly string[]): string {
  const words: string[] = [];
  const spots = labels.map(spotOf);
  for (let i = 0; i < spots.length;) {
    const run = longestRun(spots, i);
    words.push(...run.words);
    i += run.length;
  }
  return words.join(words.some((word) => word.includes(",")) ? "; " : ", ");
}

function spotOf(label: string): Spot {
  const [, wall, course, column] = LABEL.exec(label) ?? [];
  if (wall === undefined) return { label, place: null };
  return { label, place: { wall, course: Number(course), column: Number(column) } };
}

function longestRun(spots: readonly Spot[], start: number): { words: string[]; length: number } {
  const beside = runLength(spots, start, 0, 1);
  const step = courseStep(spots, start);
  const above = runLength(spots, start, step, 0);
  const length = Math.max(beside, above);
  if (length < LEAST_RUN) return { words: [spots[start]!.label], length: 1 };
  const ends = `${spots[start]!.label} to ${spots[start + length - 1]!.label}`;
  return { words: [beside >= above ? ends : `${ends}, ${everyCourse(step)}`], length };
}

function courseStep(spots: readonly Spot[], start: number): number {
  return (spots[start + 1]?.place?.course ?? 0) - (spots[start]!.place?.course ?? 0);
}

/** How many labels from `start` on go on by so many courses and places each. */
function runLength(
  spots: readonly Spot[],
  start: number,
  courses: number,
  columns: number,
): number {
  let end = start + 1;
  while (end < spots.length && follows(spots[end - 1]!, spots[end]!, courses, columns)) end++;
  return end - start;
}

function follows(
  { place: one }: Spot,
  { place: next }: Spot,
  courses: number,
  columns: number,
): boolean {
  return (
    one !== null &&
    next !== null &&
    one.wall === next.wall &&
    one.course + courses === next.course &&
    one.column + columns === next.column
  );
}

function everyCourse(step: number): string {
  if (step === 1) return "every course";
  const ending = step === 2 ? "nd" : step === 3 ? "rd" : "th";
  return `every ${step}${ending} course`;
}
