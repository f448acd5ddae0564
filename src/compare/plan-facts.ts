import {
  type Limit,
  LIMITS,
  type LimitName,
  type Plan,
  type Tile,
  type Trim,
} from "../model/index.js";
import type { Change, Fact, PartChange, PartKind } from "./comparison.js";
import { factOf, length, size, words } from "./facts-of.js";
import { boughtFacts, priceOf, supplyFacts } from "./stock-facts.js";

/** What changed of the plan itself; its units are no fact of a wall. */
export function planFacts(before: Plan, after: Plan): Fact[] {
  const of = { of: "plan" } as const;
  return [
    ...factOf(of, "title", words(before.title), words(after.title)),
    ...factOf(of, "bed", length(before.bed), length(after.bed)),
    ...supplyFacts(before, after),
    ...(Object.keys(LIMITS) as LimitName[]).flatMap((name) =>
      factOf(of, "limit", limit(before.limits[name]), limit(after.limits[name]), name),
    ),
  ];
}

function limit(stated: Limit | undefined) {
  if (!stated) return null;
  if (stated.kind === "off") return words("off");
  return stated.kind === "length" ? length(stated.nm) : words(`${stated.p}/${stated.q}`);
}

/** Parts that are new, gone or renamed. */
export function partChanges(
  kind: PartKind,
  changes: readonly Change<{ readonly name: string }>[],
): PartChange[] {
  return changes
    .map(({ before, after }) => ({
      kind,
      name: { before: before?.name ?? null, after: after?.name ?? null },
    }))
    .filter(({ name }) => name.before !== name.after);
}

export function tileFacts({ before, after }: Change<Tile>): Fact[] {
  if (!before || !after) return [];
  const of = { of: "tile", name: { before: before.name, after: after.name } } as const;
  return [
    ...factOf(of, "title", words(before.title), words(after.title)),
    ...factOf(
      of,
      "face",
      size(before.face.across, before.face.up),
      size(after.face.across, after.face.up),
    ),
    ...factOf(of, "thickness", length(before.thickness), length(after.thickness)),
    ...factOf(of, "variation", length(before.variation), length(after.variation)),
    ...factOf(of, "warpage", length(before.warpage), length(after.warpage)),
    ...factOf(of, "edges", words(before.edges), words(after.edges)),
    ...boughtFacts(of, before, after),
  ];
}

export function trimFacts({ before, after }: Change<Trim>): Fact[] {
  if (!before || !after) return [];
  const of = { of: "trim", name: { before: before.name, after: after.name } } as const;
  return [
    ...factOf(of, "title", words(before.title), words(after.title)),
    ...factOf(
      of,
      "face",
      size(before.face.along, before.face.across),
      size(after.face.along, after.face.across),
    ),
    ...factOf(of, "thickness", length(before.thickness), length(after.thickness)),
    ...factOf(of, "lot", words(before.lot), words(after.lot)),
    ...factOf(of, "price", priceOf(before.price, "piece"), priceOf(after.price, "piece")),
  ];
}
