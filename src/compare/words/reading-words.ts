import type { Pair, WallReading } from "../comparison.js";
import type { Lengths } from "./lengths.js";

/** What a wall's smallest cut, its cut pieces and its mitred edges were and are, each where it changed. */
export function readingWords({ before, after }: Pair<WallReading>, lengths: Lengths): string[] {
  const size = ({ smallest }: WallReading) =>
    smallest ? `${lengths.length(smallest.width)} x ${lengths.length(smallest.height)}` : "none";
  const same = JSON.stringify(before.smallest) === JSON.stringify(after.smallest);
  return [
    ...(same ? [] : [`smallest cut: ${size(before)} -> ${size(after)}`]),
    ...(before.cuts === after.cuts ? [] : [`cut pieces: ${before.cuts} -> ${after.cuts}`]),
    ...(before.mitred === after.mitred
      ? []
      : [`mitred edges: ${before.mitred} -> ${after.mitred}`]),
  ];
}
