/** A seeded source of chance, so that a failing test fails again. */
export interface Random {
  /** A whole number from `low` to `high`, both included. */
  integer(low: number, high: number): number;
  chance(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
}

/** The mulberry32 generator: 32 bits of state, good enough to spread test cases. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const integer = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  return {
    integer,
    chance: (probability) => next() < probability,
    pick: (list) => list[integer(0, list.length - 1)]!,
  };
}
