/// <reference lib="dom" />

/**
 * Paints the newest of what may come faster than frames. It is painted at once, so that it makes the
 * next frame; of what comes before that, the newest alone is painted then.
 */
export class NewestFrame<T> {
  #newest: T;
  #painted: T;
  #frame = 0;

  constructor(
    first: T,
    private readonly paint: (value: T) => void,
    /** What can wait until the frame is seen. */
    private readonly seen: () => void,
  ) {
    this.#newest = first;
    this.#painted = first;
  }

  /** What came last, painted or not. */
  get newest(): T {
    return this.#newest;
  }

  /** What the page shows. */
  get painted(): T {
    return this.#painted;
  }

  show(value: T): void {
    this.#newest = value;
    if (this.#frame !== 0) return;
    this.repaint();
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      if (this.#newest !== this.#painted) this.repaint();
      // By then the frame is on the screen.
      setTimeout(() => this.seen());
    });
  }

  /** Paints the newest now: how it is to be shown has changed. */
  repaint(): void {
    this.#painted = this.#newest;
    this.paint(this.#newest);
  }
}
