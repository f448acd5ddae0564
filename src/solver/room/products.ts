import type { Nm } from "../../measure/index.js";

/** Every way to take one of each list; one empty way where there are no lists. */
export function products(lists: readonly (readonly Nm[])[]): readonly (readonly Nm[])[] {
  return lists.reduce<readonly (readonly Nm[])[]>(
    (ways, list) => ways.flatMap((way) => list.map((each) => [...way, each])),
    [[]],
  );
}

/** Each place once, in the order in which they first come. */
export function unique(places: readonly Nm[]): Nm[] {
  return [...new Set(places)];
}
