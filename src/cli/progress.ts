import type { Host } from "./host.js";

/** Between two lines of progress, in milliseconds: more often nobody can read. */
const PAUSE = 100;
/** Goes back to the line's start and clears it. */
const CLEAR = "\r\u001b[K";

/** How far many jobs are, on one line of a terminal that is written over; silent where nobody watches. */
export class Progress {
  readonly #all: number;
  readonly #doing: string;
  readonly #host: Host;
  #last = Date.now();
  #shown = false;

  constructor(all: number, doing: string, host: Host) {
    this.#all = all;
    this.#doing = doing;
    this.#host = host;
  }

  tell(done: number): void {
    const now = Date.now();
    if (!this.#host.watched || now - this.#last < PAUSE || done === this.#all) return;
    this.#last = now;
    this.#shown = true;
    this.#host.err(`${CLEAR}${this.#doing}: ${done} of ${this.#all}`);
  }

  end(): void {
    if (this.#shown) this.#host.err(CLEAR);
  }
}
