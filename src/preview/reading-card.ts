/// <reference lib="dom" />
import type { PictureFinding, SpotReading } from "../service/index.js";
import { make } from "./elements.js";

/** What stands under the pointer, in a corner where it covers little. */
export class ReadingCard {
  readonly element = make("div", { class: "reading", "aria-hidden": "true" });

  constructor() {
    this.element.hidden = true;
  }

  show(reading: SpotReading | null): void {
    this.element.hidden = reading === null;
    if (!reading) return;
    const facts = reading.facts.flatMap(([name, figure]) => [
      make("dt", {}, name),
      make("dd", {}, figure),
    ]);
    this.element.replaceChildren(make("strong", {}, reading.title), make("dl", {}, ...facts));
  }

  showFinding({ code, message, source }: PictureFinding): void {
    this.element.hidden = false;
    const quiet = source === null ? [] : [make("p", { class: "quiet" }, source)];
    this.element.replaceChildren(make("strong", {}, code), make("p", {}, message), ...quiet);
  }

  /** Out of the pointer's way: at the left, or at the right while the pointer is near there. */
  keepFrom(x: number, y: number): void {
    const stage = this.element.parentElement!;
    const near = y > stage.clientHeight * 0.55 && x < stage.clientWidth / 2;
    this.element.classList.toggle("aside", near);
  }
}

/** A reading as it is spoken. */
export function spokenReading({ title, facts }: SpotReading): string {
  return [title, ...facts.map(([name, figure]) => `${name} ${figure}`)].join(", ");
}
