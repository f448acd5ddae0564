/// <reference lib="dom" />
import type { ComparisonWay } from "../../service/index.js";
import { make, makeButton } from "../elements.js";

const WAYS: readonly (readonly [ComparisonWay, string, string])[] = [
  ["sides", "Side by side", "The wall as it was, and beside it as it is"],
  ["overlay", "Overlay", "Both in one picture: kept, moved, cut differently, new and gone"],
  ["slider", "Slider", "One over the other, cut at a handle that you move"],
];

/** How both states are shown: one of three buttons is pressed. */
export class WaySwitch {
  readonly element = make("div", { class: "group", role: "group", "aria-label": "Picture" });
  readonly #buttons = new Map<ComparisonWay, HTMLButtonElement>();

  constructor(choose: (way: ComparisonWay) => void) {
    for (const [way, label, title] of WAYS) {
      const button = makeButton(label, title, () => choose(way));
      this.#buttons.set(way, button);
      this.element.append(button);
    }
  }

  set way(chosen: ComparisonWay) {
    for (const [way, button] of this.#buttons) {
      button.setAttribute("aria-pressed", String(way === chosen));
    }
  }
}
