import type { Hole, Opening } from "../model/index.js";
import type { Change, Fact, Value } from "./comparison.js";
import { factOf, length, size, words } from "./facts-of.js";

/** What changed of an opening that is in both plans. */
export function openingFacts({ before, after }: Change<Opening>): Fact[] {
  if (!before || !after) return [];
  const of = { of: after.kind, name: { before: before.name, after: after.name } } as const;
  return [
    ...factOf(of, "place", place(before), place(after)),
    ...factOf(
      of,
      "size",
      size(before.size.across, before.size.up),
      size(after.size.across, after.size.up),
    ),
    ...factOf(of, "frame", frame(before), frame(after)),
    ...(before.frame && after.frame
      ? factOf(of, "inset", length(before.frame.inset), length(after.frame.inset))
      : []),
    ...factOf(of, "soft joint", length(before.movement), length(after.movement)),
    ...factOf(
      of,
      "depth",
      length(before.inside?.depth ?? null),
      length(after.inside?.depth ?? null),
    ),
    ...factOf(of, "fall", length(before.inside?.fall ?? null), length(after.inside?.fall ?? null)),
  ];
}

/** What changed of a round hole that is in both plans. */
export function holeFacts({ before, after }: Change<Hole>): Fact[] {
  if (!before || !after) return [];
  const of = { of: "hole", name: { before: before.name, after: after.name } } as const;
  return [
    ...factOf(of, "place", place(before), place(after)),
    ...factOf(of, "diameter", length(before.across), length(after.across)),
    ...factOf(of, "plate", plate(before), plate(after)),
  ];
}

function place({ at }: Opening | Hole): Value {
  return { kind: "place", x: at.x, y: at.y };
}

function plate({ plate: covering }: Hole): Value | null {
  if (!covering) return null;
  return covering.kind === "round" ? length(covering.across) : size(covering.across, covering.up);
}

function frame({ frame: round }: Opening): Value | null {
  return words(round ? `${round.trim.name} ${round.join}` : null);
}
