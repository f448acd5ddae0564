/** A heap: hands out what it holds, the least first. */
export class LeastFirst<T> {
  private readonly held: T[] = [];

  constructor(private readonly compare: (a: T, b: T) => number) {}

  push(item: T): void {
    const { held, compare } = this;
    let i = held.push(item) - 1;
    while (i > 0) {
      const parent = (i - 1) >> 1;
      if (compare(item, held[parent]!) >= 0) break;
      held[i] = held[parent]!;
      i = parent;
    }
    held[i] = item;
  }

  /** The least of all that it holds; undefined when it holds nothing. */
  pop(): T | undefined {
    const { held } = this;
    const least = held[0];
    const item = held.pop();
    if (item !== undefined && held.length > 0) this.sink(item);
    return least;
  }

  private sink(item: T): void {
    const { held, compare } = this;
    let i = 0;
    for (let child = 1; child < held.length; child = 2 * i + 1) {
      if (child + 1 < held.length && compare(held[child + 1]!, held[child]!) < 0) child++;
      if (compare(held[child]!, item) >= 0) break;
      held[i] = held[child]!;
      i = child;
    }
    held[i] = item;
  }
}
