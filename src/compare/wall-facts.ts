import type { Nm } from "../measure/index.js";
import { type Edge, edgeTrim, type Side, type Wall } from "../model/index.js";
import type { Fact, Pair, Value } from "./comparison.js";
import { factOf, length, size, words } from "./facts-of.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** What changed of a bare wall and of what its sides meet. `renamed` gives walls' new names. */
export function wallFacts(before: Wall, after: Wall, renamed: ReadonlyMap<string, string>): Fact[] {
  const of = { of: "wall" } as const;
  return [
    ...factOf(
      of,
      "size",
      size(before.size.across, before.size.up),
      size(after.size.across, after.size.up),
    ),
    ...SIDES.flatMap((side) =>
      edgeFacts(side, { before: before.edges[side], after: after.edges[side] }, renamed),
    ),
  ];
}

function edgeFacts(
  side: Side,
  { before, after }: Pair<Edge>,
  renamed: ReadonlyMap<string, string>,
): Fact[] {
  const of = { of: "edge", side } as const;
  const isSame = meets(before, renamed) === meets(after, new Map());
  return [
    ...(isSame ? [] : factOf(of, "meets", words(meets(before)), words(meets(after)))),
    ...factOf(of, "soft joint", jointOf(before, "movement"), jointOf(after, "movement")),
    ...factOf(of, "joint", jointOf(before, "joint"), jointOf(after, "joint")),
    ...readingFacts(side, before, after),
  ];
}

/** `pan`, `corner back under`, `free trim nose`. */
function meets({ meets: met }: Edge, renamed: ReadonlyMap<string, string> = new Map()): string {
  if (met.kind === "corner") return `corner ${renamed.get(met.wall) ?? met.wall} ${met.lap}`;
  if (met.kind === "outside") {
    const trim = edgeTrim(met);
    return `outside ${renamed.get(met.wall) ?? met.wall} ${met.lap}${trim ? ` trim ${trim.name}` : ""}`;
  }
  if (met.kind === "free") return met.trim ? `free trim ${met.trim.name}` : "free";
  return met.kind;
}

function jointOf({ joint }: Edge, kind: "movement" | "joint"): Value | null {
  return joint?.kind === kind ? length(joint.width) : null;
}

/** Reading by reading, in the order along the side; at a riser of an outline there are two. */
function readingFacts(side: Side, before: Edge, after: Edge): Fact[] {
  const places = [...new Set<Nm>([...before.measured, ...after.measured].map(({ at }) => at))];
  const offsAt = ({ measured }: Edge, place: Nm): Nm[] =>
    measured.filter(({ at }) => at === place).map(({ off }) => off);
  return places
    .sort((a, b) => a - b)
    .flatMap((at) => {
      const [old, now] = [offsAt(before, at), offsAt(after, at)];
      const most = old.length > now.length ? old : now;
      return most.flatMap((_, i) =>
        factOf({ of: "edge", side }, "reading", length(old[i] ?? null), length(now[i] ?? null), at),
      );
    });
}
