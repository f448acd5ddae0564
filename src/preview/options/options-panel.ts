/// <reference lib="dom" />
import type { OptionGroup, PlanOptions } from "../../service/index.js";
import { make } from "../elements.js";
import { roveFocus, setStop } from "../roving.js";
import { optionCard } from "./option-card.js";

/** Which of the shown layouts is meant: by its group and its place in it, from 0. */
export interface OptionPlace {
  readonly group: number;
  readonly option: number;
}

/** The layouts side by side, each a card. */
export class OptionsPanel {
  readonly element = make("section", { class: "options", "aria-label": "Options" });
  readonly #status = make("p", { class: "quiet", role: "status" });
  readonly #groups = make("div", { class: "option-groups" });

  constructor(private readonly take: (place: OptionPlace) => void) {
    const heading = make("div", { class: "options-head" }, make("h2", {}, "Options"), this.#status);
    this.element.append(heading, this.#groups);
    this.element.hidden = true;
    roveFocus(this.#groups);
  }

  /** What is said over the cards. */
  say(words: string): void {
    if (this.#status.textContent !== words) this.#status.textContent = words;
  }

  /** Whether what is shown is of an older text than what is written now. */
  set stale(stale: boolean) {
    this.element.setAttribute("aria-busy", String(stale));
  }

  show(options: PlanOptions | null): void {
    const focused = buttonsOf(this.#groups).indexOf(document.activeElement as HTMLButtonElement);
    const groups = options?.groups.map((group, i) => this.#group(group, i)) ?? [];
    if (options && options.more > 0) {
      const more = `${options.more} more ${options.more === 1 ? "wall" : "walls"}: choose one in the row of walls above.`;
      groups.push(make("p", { class: "quiet" }, more));
    }
    this.#groups.replaceChildren(...groups);
    setStop(this.#groups, focused);
    // The card that was taken is another one now: the keys stay at its place.
    const buttons = buttonsOf(this.#groups);
    if (focused >= 0) buttons[Math.min(focused, buttons.length - 1)]?.focus();
  }

  #group({ title, note, options }: OptionGroup, group: number): HTMLElement {
    const cards = options.map((option, i) =>
      optionCard(option, () => this.take({ group, option: i })),
    );
    return make(
      "section",
      { "aria-label": title },
      make("h3", {}, title),
      make("p", { class: "quiet" }, note),
      ...(cards.length > 0 ? [make("ul", { class: "option-cards" }, ...cards)] : []),
    );
  }
}

function buttonsOf(element: HTMLElement): HTMLButtonElement[] {
  return Array.from(element.querySelectorAll("button"));
}
