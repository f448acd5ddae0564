/** What a run of timings comes to, in milliseconds. */
export interface Timing {
  readonly name: string;
  readonly median: number;
  readonly p95: number;
  readonly min: number;
  /** The middle half of the samples, over the median. */
  readonly spread: number;
  readonly rounds: number;
}

/** Answers land here, so that nothing measured can be left out as unused. */
export const sink: { value: unknown } = { value: null };

export interface Rounds {
  readonly warmup: number;
  readonly rounds: number;
}

/** Times a function round by round; each round gets its number, so that inputs can differ. */
export function time(
  name: string,
  { warmup, rounds }: Rounds,
  run: (round: number) => unknown,
): Timing {
  const samples: number[] = [];
  for (let round = 0; round < warmup + rounds; round++) {
    const start = performance.now();
    sink.value = run(round);
    const spent = performance.now() - start;
    if (round >= warmup) samples.push(spent);
  }
  return summarise(name, samples);
}

/** Times several functions turn by turn, so that what slows the machine slows all alike. */
export function timeInTurn(
  { warmup, rounds }: Rounds,
  runs: Readonly<Record<string, (round: number) => unknown>>,
): Record<string, Timing> {
  const samples = Object.fromEntries(Object.keys(runs).map((name) => [name, [] as number[]]));
  for (let round = 0; round < warmup + rounds; round++) {
    for (const [name, run] of Object.entries(runs)) {
      const start = performance.now();
      sink.value = run(round);
      const spent = performance.now() - start;
      if (round >= warmup) samples[name]!.push(spent);
    }
  }
  return Object.fromEntries(
    Object.entries(samples).map(([name, list]) => [name, summarise(name, list)]),
  );
}

export function summarise(name: string, samples: readonly number[]): Timing {
  const sorted = [...samples].sort((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  const median = at(0.5);
  return {
    name,
    median,
    p95: at(0.95),
    min: sorted[0]!,
    spread: (at(0.75) - at(0.25)) / median,
    rounds: sorted.length,
  };
}
