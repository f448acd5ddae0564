/// <reference lib="dom" />
import type { Place } from "../drawing/index.js";
import type { PictureFinding, SpotReading } from "../service/index.js";
import { make } from "./elements.js";
import { quoted } from "./quoted.js";

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
    this.element.replaceChildren(
      make("strong", {}, code),
      make("p", {}, ...quoted(message)),
      ...quiet,
    );
  }

  /** At the left, or at the right while what it tells of is there; shares of the stage. */
  keepFrom({ x, y }: Place): void {
    this.element.classList.toggle("aside", y > 0.55 && x < 0.5);
  }
}

/** A reading as it is spoken. */
export function spokenReading({ title, facts }: SpotReading): string {
  return [title, ...facts.map(([name, figure]) => `${name} ${figure}`)].join(", ");
}
