import { heightOf, type Rest, widthOf } from "./rest.js";

/** Rests of one size with the same edges: any of them does. */
export interface Alike {
  readonly key: string;
  readonly rests: Rest[];
}

/** What is left of the tiles that were begun, those that are alike together. */
export class RestShelf {
  private readonly groups = new Map<string, Alike>();
  private readonly aside: Rest[] = [];

  lay(rest: Rest): void {
    const key = `${widthOf(rest)}x${heightOf(rest)}/${rest.own}`;
    const group = this.groups.get(key);
    if (group) group.rests.push(rest);
    else this.groups.set(key, { key, rests: [rest] });
  }

  /** Takes one of a group, which must be on the shelf. */
  take({ key, rests }: Alike): Rest {
    const rest = rests.pop()!;
    if (rests.length === 0) this.groups.delete(key);
    return rest;
  }

  /** Keeps a rest as an offcut that nothing is cut from any more. */
  putAside(rest: Rest): void {
    this.aside.push(rest);
  }

  /** Puts all rests aside that nothing can be cut from. */
  setAside(isUseless: (rest: Rest) => boolean): void {
    for (const { key, rests } of this.groups.values()) {
      if (!isUseless(rests[0]!)) continue;
      for (const rest of rests) this.aside.push(rest);
      this.groups.delete(key);
    }
  }

  /** The groups that something may be cut from, the longest there first. */
  kinds(): IterableIterator<Alike> {
    return this.groups.values();
  }

  /** Every rest, those put aside with them. */
  all(): Rest[] {
    return [...this.aside, ...[...this.groups.values()].flatMap(({ rests }) => rests)];
  }

  copy(): RestShelf {
    const copy = new RestShelf();
    for (const rest of this.aside) copy.aside.push(rest);
    for (const { key, rests } of this.groups.values()) {
      copy.groups.set(key, { key, rests: [...rests] });
    }
    return copy;
  }
}
