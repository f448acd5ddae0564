/// <reference lib="dom" />
import { make, makeButton } from "./elements.js";
import { ACTUAL_SCALE } from "./view.js";

export interface ToolbarActs {
  readonly fit: () => void;
  readonly width: () => void;
  readonly actual: () => void;
  readonly zoom: (factor: number) => void;
  readonly export: (format: "svg" | "png") => void;
  readonly pin: (pinned: boolean) => void;
  readonly mark: (marked: boolean) => void;
  readonly room: (shown: boolean) => void;
  readonly options: (shown: boolean) => void;
}

export const ZOOM_STEP = 1.25;

const KEYS: readonly (readonly [string, string])[] = [
  ["Drag, wheel, arrow keys", "move the picture"],
  ["Ctrl + wheel, pinch, + and -", "zoom"],
  ["0, W, 1", "fit, width, actual size"],
  ["P", "walk from piece to piece with the arrow keys"],
  ["Enter, click", "go to the line that made it"],
];

/** What can be done with the picture, as buttons. */
export class Toolbar {
  readonly element = make("header", { class: "toolbar", "aria-label": "Picture" });
  readonly #zoom = make("span", { class: "zoom", title: "Share of actual size" });
  readonly #pin: HTMLButtonElement;
  readonly #mark: HTMLButtonElement;
  readonly #room: HTMLButtonElement;
  readonly #options: HTMLButtonElement;

  constructor(acts: ToolbarActs, layers: HTMLElement) {
    this.#pin = makeSwitch("Pin", "Stay with this plan when another one is edited", acts.pin);
    this.#mark = makeSwitch(
      "Changes",
      "Mark the pieces that changed since the last commit, or since this preview opened",
      acts.mark,
    );
    this.#room = makeSwitch(
      "Room",
      "Show the walls unfolded, in their order round the room",
      acts.room,
    );
    this.#options = makeSwitch(
      "Options",
      "Show the best few layouts side by side, to take one",
      acts.options,
    );
    const out = makeButton("−", "Zoom out", () => acts.zoom(1 / ZOOM_STEP));
    out.setAttribute("aria-label", "Zoom out");
    const closer = makeButton("+", "Zoom in", () => acts.zoom(ZOOM_STEP));
    closer.setAttribute("aria-label", "Zoom in");
    this.element.append(
      group(
        makeButton("Fit", "Show all of it", acts.fit),
        makeButton("Width", "As wide as there is room", acts.width),
        makeButton("Actual size", "One inch of wall takes one inch of screen", acts.actual),
      ),
      group(out, this.#zoom, closer),
      layers,
      group(this.#room, this.#options),
      group(
        makeButton("Save SVG", "Save what is seen as SVG", () => acts.export("svg")),
        makeButton("Save PNG", "Save what is seen as PNG", () => acts.export("png")),
      ),
      group(this.#mark, this.#pin),
      keysMenu(),
    );
    this.pinned = false;
    this.marked = true;
    this.unfolds = false;
    this.unfolded = false;
    this.optionsShown = false;
  }

  /** Whether there is a room to show unfolded. */
  set unfolds(unfolds: boolean) {
    this.#room.hidden = !unfolds;
  }

  set unfolded(unfolded: boolean) {
    this.#room.setAttribute("aria-pressed", String(unfolded));
  }

  set optionsShown(shown: boolean) {
    this.#options.setAttribute("aria-pressed", String(shown));
  }

  set marked(marked: boolean) {
    this.#mark.setAttribute("aria-pressed", String(marked));
  }

  set pinned(pinned: boolean) {
    this.#pin.setAttribute("aria-pressed", String(pinned));
  }

  set scale(scale: number) {
    this.#zoom.textContent = shareWords(scale / ACTUAL_SCALE);
  }
}

/** A share as percent, in two digits or three. */
export function shareWords(share: number): string {
  const percent = 100 * share;
  return `${percent < 10 ? percent.toFixed(1) : percent.toFixed(0)} %`;
}

/** A button that stays pressed. */
function makeSwitch(label: string, title: string, turn: (on: boolean) => void): HTMLButtonElement {
  const button = makeButton(label, title, () =>
    turn(button.getAttribute("aria-pressed") !== "true"),
  );
  return button;
}

function group(...inside: readonly Node[]): HTMLElement {
  return make("div", { class: "group" }, ...inside);
}

function keysMenu(): HTMLElement {
  const rows = KEYS.flatMap(([keys, does]) => [make("dt", {}, keys), make("dd", {}, does)]);
  return make(
    "details",
    { class: "menu keys" },
    make("summary", {}, "Keys"),
    make("dl", {}, ...rows),
  );
}
