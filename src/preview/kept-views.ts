import type { Host } from "./host.js";
import { type KeptView, readKeptView } from "./kept-view.js";
import type { PreviewState } from "./messages.js";

/** Milliseconds of rest before the view is kept for a reload. */
const KEEP_AFTER = 150;

/** How a preview stands: its plan and switches, and its view where a picture is seen. */
export interface Standing extends Omit<PreviewState, "view"> {
  readonly view: KeptView | null;
}

/**
 * The views of all plans that this preview has shown: a plan that comes again is seen as it was left,
 * and the one that is shown, over a reload of the window too.
 */
export class KeptViews {
  readonly #kept = new Map<string, KeptView>();
  #keeping: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly host: Pick<Host, "keep" | "recall">,
    /** null before a plan is shown. */
    private readonly standing: () => Standing | null,
  ) {}

  of(uri: string): KeptView | null {
    return this.#kept.get(uri) ?? null;
  }

  /** What was kept over a reload, or null. */
  recall(): PreviewState | null {
    const state = this.host.recall();
    const view = readKeptView(state?.view);
    if (!state || !view) return null;
    this.#kept.set(state.uri, view);
    return state;
  }

  /** Keeps the view once it rests. */
  soon(): void {
    clearTimeout(this.#keeping);
    this.#keeping = setTimeout(() => this.now(), KEEP_AFTER);
  }

  now(): void {
    clearTimeout(this.#keeping);
    const standing = this.standing();
    if (!standing) return;
    const { view: seen, ...state } = standing;
    if (seen) this.#kept.set(state.uri, seen);
    const view = this.#kept.get(state.uri);
    this.host.keep({ ...state, ...(view && { view }) });
  }
}
