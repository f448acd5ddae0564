import { heightOf, type Rest, widthOf } from "./rest.js";

/** Rests of one size with the same edges: any of them does. */
export interface Alike {
  readonly key: string;
  /** By which they stand in order; past 2^53 nm² rounded, but never smaller than a piece's that fits. */
  readonly area: number;
  readonly rests: Rest[];
}

/** What is left of the tiles that were begun: those that are alike together, the smallest first. */
export class RestShelf {
  private readonly groups = new Map<string, Alike>();
  private readonly inOrder: Alike[] = [];
  private readonly aside: Rest[] = [];

  lay(rest: Rest): void {
    const [width, height] = [widthOf(rest), heightOf(rest)];
    const key = `${width}x${height}/${rest.own}`;
    const known = this.groups.get(key);
    if (known) {
      known.rests.push(rest);
      return;
    }
    const group = { key, area: width * height, rests: [rest] };
    this.groups.set(key, group);
    this.inOrder.splice(this.firstOf(group.area), 0, group);
  }

  /** Takes one of a group, which must be on the shelf. */
  take(group: Alike): Rest {
    const rest = group.rests.pop()!;
    if (group.rests.length === 0) {
      this.groups.delete(group.key);
      this.inOrder.splice(this.inOrder.indexOf(group, this.firstOf(group.area)), 1);
    }
    return rest;
  }

  /** Keeps a rest as an offcut that nothing is cut from any more. */
  putAside(rest: Rest): void {
    this.aside.push(rest);
  }

  /** Puts all rests aside that nothing can be cut from. */
  setAside(isUseless: (rest: Rest) => boolean): void {
    const groups = this.inOrder.splice(0);
    this.groups.clear();
    for (const group of groups) {
      if (isUseless(group.rests[0]!)) {
        for (const rest of group.rests) this.aside.push(rest);
      } else {
        this.groups.set(group.key, group);
        this.inOrder.push(group);
      }
    }
  }

  /** The groups of at least this area, the smallest first, and so many at most. */
  smallestOf(area: number, most: number): readonly Alike[] {
    const first = this.firstOf(area);
    return this.inOrder.slice(first, first + most);
  }

  /** Every rest, those put aside with them. */
  all(): Rest[] {
    return [...this.aside, ...this.inOrder.flatMap(({ rests }) => rests)];
  }

  copy(): RestShelf {
    const copy = new RestShelf();
    for (const rest of this.aside) copy.aside.push(rest);
    for (const group of this.inOrder) {
      const same = { ...group, rests: [...group.rests] };
      copy.groups.set(same.key, same);
      copy.inOrder.push(same);
    }
    return copy;
  }

  private firstOf(area: number): number {
    let low = 0;
    let high = this.inOrder.length;
    while (low < high) {
      const middle = Math.floor((low + high) / 2);
      if (this.inOrder[middle]!.area < area) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
