import type { SolvedWall } from "../../solver/index.js";
import type { TrimCut } from "../../takeoff/index.js";
import { plainText } from "../../drawing/index.js";
import { NONE, tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";
import { titleOf } from "./words.js";

/** The trim of one wall: equal lengths together, with the hands of their mitres. */
export function trimBlocks({ takeoff, both }: Ground, { wall }: SolvedWall): Block[] {
  const rows = takeoff.trims.flatMap(({ trim, pieces }) =>
    pieces.flatMap((cut) => {
      const places = cut.where.filter((place) => place.wall === wall.name);
      if (places.length === 0) return [];
      return [
        [
          titleOf(trim),
          cut.whole ? `whole, ${both(cut.length)}` : both(cut.length),
          endsWords(cut),
          `${places.length}`,
          severalPlaces(places.map(({ along }) => plainText(along))),
        ],
      ];
    }),
  );
  return tableOfSome(
    "Trim: hands seen from the front with the finished edge up",
    ["Trim", ">Length", "Mitred ends", ">Count", "Goes along"],
    rows,
  );
}

function endsWords({ mitred }: TrimCut): string {
  return mitred.length === 0 ? NONE : mitred.join(" and ");
}

/** `sash bottom (4), sash top (4)`. */
function severalPlaces(places: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const place of places) counts.set(place, (counts.get(place) ?? 0) + 1);
  return [...counts]
    .map(([place, count]) => (count === 1 ? place : `${place} (${count})`))
    .join(", ");
}
