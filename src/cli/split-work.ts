import type { Shard } from "./request.js";

/**
 * One part of a list: neighbours stay together, so that the reports of all parts, one after the
 * other, are the report of the whole.
 */
export function shardOf<T>(list: readonly T[], shard: Shard | null): readonly T[] {
  if (!shard) return list;
  const edge = (part: number) => Math.floor((list.length * part) / shard.of);
  return list.slice(edge(shard.part - 1), edge(shard.part));
}

/** Starting a thread costs as much as some plans: fewer than these are done one after the other. */
export const MANY = 32;
