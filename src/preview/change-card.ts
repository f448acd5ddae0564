/// <reference lib="dom" />
import { MARKED_FATES, type MarkedFate } from "./change-marks.js";
import { make, makeButton, makeSvg } from "./elements.js";
import type { ToldChanges } from "./messages.js";

const WORDS: Readonly<Record<MarkedFate, string>> = {
  recut: "cut differently",
  fresh: "new",
  gone: "gone",
};

const NOTHING = "nothing changed but the text";

/** What changed in the picture and since when, with the key to its marks. Nothing shows where nothing changed. */
export class ChangeCard {
  readonly element = make("div", { class: "change-card", role: "note", "aria-label": "Changes" });
  readonly #words = make("p", {});
  readonly #key = make("ul", { class: "change-key" });

  constructor(compare: () => void) {
    const button = makeButton("Compare", "Show both states of the walls", compare);
    this.element.append(this.#words, this.#key, button);
    // It lies on the picture, which takes the pointer where it is pressed.
    this.element.addEventListener("pointerdown", (event) => event.stopPropagation());
    this.element.hidden = true;
  }

  show(told: ToldChanges | null): void {
    const headline = told?.changes.headline ?? NOTHING;
    this.element.hidden = headline === NOTHING;
    if (!told || this.element.hidden) return;
    this.#words.replaceChildren(make("b", {}, `Since ${told.since}:`), ` ${headline}`);
    const occurs = MARKED_FATES.filter((fate) =>
      told.changes.walls.some((wall) => wall[fate].length > 0),
    );
    this.#key.replaceChildren(...occurs.map(keyOf));
    this.#key.hidden = occurs.length === 0;
  }
}

/** As they are drawn: see change-marks.ts. */
const SWATCHES: Readonly<Record<MarkedFate, string>> = {
  recut: "M2 2H22V12H2Z",
  fresh: "M2 2H22V12H2ZM12 4V10M9 7H15",
  gone: "M2 2H22V12H2ZM9 4L15 10M9 10L15 4",
};

function keyOf(fate: MarkedFate): HTMLElement {
  const path = makeSvg("path", { class: `change-${fate}`, d: SWATCHES[fate] });
  const swatch = makeSvg("svg", { viewBox: "0 0 24 14", "aria-hidden": "true" }, path);
  return make("li", {}, swatch, WORDS[fate]);
}
