import type { Side } from "../../model/index.js";
import type { Alignment, Change } from "../comparison.js";

/** What was gained, then what was lost; the sides of one opening in one line. */
export function alignmentWords(changes: readonly Change<Alignment>[]): string[] {
  return (["after", "before"] as const).flatMap((when) => {
    const list = changes.flatMap((each) =>
      each[when === "after" ? "before" : "after"] === null ? each[when]! : [],
    );
    const label = when === "after" ? "gained" : "lost";
    return inLine(list).map((words) => `${label}: ${words}`);
  });
}

/** What stands in line, in words. */
function inLine(list: readonly Alignment[]): string[] {
  const sides = new Map<string, Side[]>();
  for (const each of list) {
    if (each.kind !== "opening on a joint") continue;
    sides.set(each.opening, [...(sides.get(each.opening) ?? []), each.side]);
  }
  const openings = [...sides].map(([opening, own]) => {
    if (own.length === 1) return `the ${own[0]!} of ${opening} on a joint`;
    return `the ${own.slice(0, -1).join(", ")} and ${own.at(-1)!} of ${opening} on joints`;
  });
  const others = list.flatMap((each) => {
    if (each.kind === "courses meet") return [`the courses meet those of ${each.wall}`];
    if (each.kind !== "centred") return [];
    return [`a ${each.what} on the centre line of ${each.on === "wall" ? "the wall" : each.on}`];
  });
  return [...openings, ...others];
}
