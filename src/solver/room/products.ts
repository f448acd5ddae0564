import { thinned } from "../choose/budget.js";
import type { Nm } from "../../measure/index.js";

/** No more ways than this are made; those at the lists' ends are among them. */
const MOST = 20_000;

/** Every way to take one of each list, in part where there are too many; one empty way where there are no lists. */
export function products(lists: readonly (readonly Nm[])[]): readonly (readonly Nm[])[] {
  return lists.reduce<readonly (readonly Nm[])[]>(
    (ways, list) =>
      thinned(ways, Math.max(2, Math.floor(MOST / list.length))).flatMap((way) =>
        list.map((each) => [...way, each]),
      ),
    [[]],
  );
}

/** Each place once, in the order in which they first come. */
export function unique(places: readonly Nm[]): Nm[] {
  return [...new Set(places)];
}
