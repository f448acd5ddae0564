/// <reference lib="dom" />
import type { View } from "./view.js";

const GLIDE_MS = 160;

/** Moves from one view to another in a moment, or at once where less motion is asked for. */
export class Glide {
  #frame = 0;

  constructor(private readonly look: (view: View) => void) {}

  to(from: View, view: View): void {
    this.stop();
    if (wantsLessMotion()) {
      this.look(view);
      return;
    }
    const start = performance.now();
    const step = (now: number): void => {
      const done = Math.min(1, Math.max(0, now - start) / GLIDE_MS);
      this.look(done === 1 ? view : between(from, view, 1 - (1 - done) ** 3));
      if (done < 1) this.#frame = requestAnimationFrame(step);
    };
    this.#frame = requestAnimationFrame(step);
  }

  stop(): void {
    cancelAnimationFrame(this.#frame);
  }
}

/** A view on the way: zoom changes evenly to the eye, so by its logarithm. */
export function between(from: View, to: View, share: number): View {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  return {
    ...to,
    x: mix(from.x, to.x),
    y: mix(from.y, to.y),
    scale: Math.exp(mix(Math.log(from.scale), Math.log(to.scale))),
  };
}

/** The system asks for less motion, or the editor does (its own setting shows as a class). */
function wantsLessMotion(): boolean {
  return (
    matchMedia("(prefers-reduced-motion: reduce)").matches ||
    document.body.classList.contains("vscode-reduce-motion")
  );
}
