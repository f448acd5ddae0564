import type { Wall } from "../../model/index.js";
import { isOneTile } from "./bond-miss.js";
import type { LayPair } from "./corners.js";
import type { Link } from "./linked-walls.js";
import type { Wanting } from "./wanting.js";

/** What is wanted of walls that meet, wish by wish: a bond can only go on in tile of one face. */
export function linksOf(
  { wishes }: Wanting,
  walls: readonly Wall[],
  pairs: readonly LayPair[],
): Link[] {
  const isOf = ({ a, b }: LayPair, name: string | null) =>
    name === null || [a, b].some((i) => walls[i]!.name === name);
  const isBonded = ({ a, b, isBonded: isSo }: LayPair) =>
    isSo && isOneTile(walls[a]!.lays[0]!.tile, walls[b]!.lays[0]!.tile);
  return wishes.flatMap(({ wish, place }): Link[] => {
    const { kind: wanted } = wish.wanted;
    if (wanted !== "courses-meet" && wanted !== "bond-goes-on") return [];
    return pairs
      .filter((pair) => isOf(pair, wish.wall) && (wanted === "courses-meet" || isBonded(pair)))
      .map(({ a, b, end, isSayable }) => ({ a, b, end, isSayable, place, wanted }));
  });
}
